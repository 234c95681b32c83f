package setwright.holding.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/**
 * How many times a load a grip bears: the largest factor at which weight, factor times the load, and a force in the
 * friction cone of every contact still add up to nothing. One balance is made for a grip and answers any number of
 * questions; it keeps nothing of them.
 *
 * <p>Cones are inscribed pyramids: with 64 edges as if the friction were up to 0.13 % less, never more. That a balance
 * exists is necessary, not sufficient: contacts that only react may be credited with a helpful split. A vise
 * grip therefore counts packing and stops at half their friction.
 */
public final class FrictionBalance {
    /** Edges of each cone. */
    public static final int EDGES = 64;

    /** The rule, for the working. */
    public static final Procedure HOLD_FACTOR = new Procedure(
            "hold factor",
            List.of(
                    "each contact gives a force within its friction cone (" + EDGES + " edges, inscribed)",
                    "what is pressed presses exactly that hard (one jaw: in sum); the rest reacts and never pulls",
                    "these forces, the own weight and k times the load add up to no force and no moment",
                    "the largest such k is found by linear programme, the least over all loads counts",
                    "proved by the motion that starts: its power bounds k from above"),
            Unit.NONE,
            Source.of("computed (statics with Coulomb friction, linear programme with certificate)"));

    private static final double CLEARLY_LESS = 1 - 1e-9;

    private final Grip grip;
    private final Cones cones;
    private final Optional<Simplex> simplex;

    public FrictionBalance(Grip grip) {
        this(grip, EDGES);
    }

    /** A balance with another number of edges; below 16 it asks up to 41 % too much of the grip. */
    FrictionBalance(Grip grip, int edges) {
        this.grip = grip;
        cones = new Cones(grip, edges);
        simplex = Simplex.standing(cones);
    }

    private FrictionBalance(Grip grip, Cones cones) {
        this.grip = grip;
        this.cones = cones;
        simplex = Optional.empty();
    }

    /** The same balance by the second opinion alone. */
    static FrictionBalance bySecondOpinion(Grip grip, int edges) {
        return new FrictionBalance(grip, new Cones(grip, edges));
    }

    public Grip grip() {
        return grip;
    }

    /** The least factor over all loads; each is a load on its own, the weight acts with every one. */
    public Answer answer(List<Load> loads) {
        Optional<Answer> fallen = fallen();
        if (fallen.isPresent()) {
            return fallen.get();
        }
        List<Question> open = new ArrayList<>();
        for (Load load : loads) {
            Question question = Question.of(cones, load);
            if (question.size() > 0) {
                open.add(question);
            }
        }
        return least(open);
    }

    public Answer answer(Load load) {
        return answer(List.of(load));
    }

    /** An answer as a worked value: rule, what it was worked from, and the deciding load, motion and contact. */
    public static Worked worked(Answer answer, Value... from) {
        return HOLD_FACTOR.of(answer.factor(), answer.words(), from);
    }

    private Optional<Answer> fallen() {
        if (simplex.filter(Simplex::stands).isPresent()) {
            return Optional.empty();
        }
        return simplex.map(Simplex::nothing)
                .flatMap(this::doesNotStand)
                .or(() -> doesNotStand(new SecondOpinion(cones).nothing()));
    }

    private Optional<Answer> doesNotStand(Solution nothing) {
        double[] noLoad = new double[cones.rows()];
        Certificate certificate = Certificate.of(cones, noLoad, nothing);
        if (!certificate.isGood()) {
            return Optional.empty();
        }
        Giving giving = Giving.of(grip, cones, Turning.least(cones, noLoad, nothing));
        return Optional.of(new Answer.DoesNotStand(giving.first(), giving.motion(), certificate));
    }

    /**
     * Takes the load first that the motions found so far bound lowest. A load that is found to hold at the least factor
     * so far is left there: what lies between loads that hold never costs more than that.
     */
    private Answer least(List<Question> open) {
        double least = Answer.BEYOND;
        Certificate certificate = new Certificate(0, 0, 0);
        Optional<Settled> governing = Optional.empty();
        Trail trail = new Trail();
        while (!open.isEmpty()) {
            Question question = Question.mostUrgent(open);
            open.remove(question);
            Settled settled = settle(question, least, trail);
            certificate = certificate.with(settled.certificate());
            if (settled.solution().proves() == Solution.Proves.EXACTLY) {
                open.replaceAll(other -> other.boundedBy(cones, settled.solution()));
                if (settled.factor() < least * CLEARLY_LESS) {
                    least = settled.factor();
                    governing = Optional.of(settled);
                }
            }
        }
        Certificate proof = certificate;
        return governing.<Answer>map(last -> holds(last, proof)).orElseGet(() -> new Answer.BeyondAsked(proof));
    }

    private Answer holds(Settled settled, Certificate certificate) {
        Question question = settled.question();
        Giving giving = Giving.of(grip, cones, Turning.least(cones, question.column(), settled.solution()));
        return new Answer.Holds(settled.factor(), question.load(), giving.first(), giving.motion(), certificate);
    }

    private Settled settle(Question question, double least, Trail trail) {
        double[] column = question.column();
        double enough = least * question.size() / cones.force();
        Optional<Settled> ours = simplex.filter(Simplex::stands)
                .flatMap(solver -> solver.push(column, enough, trail))
                .map(solution -> settled(question, solution))
                .filter(settled -> settled.certificate().isGood());
        return ours.orElseGet(() -> secondOpinion(question, enough));
    }

    private Settled secondOpinion(Question question, double enough) {
        Settled settled = settled(question, new SecondOpinion(cones).push(question.column(), enough));
        if (!settled.certificate().isGood()) {
            throw new ArithmeticException("The friction balance under " + question.load() + " was solved twice and not"
                    + " proved: " + settled.certificate() + ". Contacts less than 0.001 mm apart may be the reason.");
        }
        return settled;
    }

    private Settled settled(Question question, Solution solution) {
        double factor = Math.max(0, solution.push() * cones.force() / question.size());
        return new Settled(question, solution, factor, Certificate.of(cones, question.column(), solution));
    }

    /** A load whose factor is known, or known to be enough. */
    private record Settled(Question question, Solution solution, double factor, Certificate certificate) {}
}
