package setwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers of a plan with their questions. Most edits change one operation: a question that is still word for word the same
 * keeps its answer.
 *
 * @param <Q> a record that holds everything its answer is made of
 * @param <A> what comes out, the same for the same question
 */
public final class Kept<Q, A> {
    private final Map<String, Answered<Q, A>> answers;

    private record Answered<Q, A>(Q question, A answer) {}

    private Kept(Map<String, Answered<Q, A>> answers) {
        this.answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Kept<?, ?> kept && answers.equals(kept.answers);
    }

    @Override
    public int hashCode() {
        return answers.size();
    }

    /** Where nothing was asked before. */
    public static <Q, A> Kept<Q, A> none() {
        return new Kept<>(Map.of());
    }

    /** The questions of the next plan, held against these. */
    public Round<Q, A> round() {
        return new Round<>(this);
    }

    /** The questions of one plan while it is made. */
    public static final class Round<Q, A> {
        private final Kept<Q, A> before;
        private final Map<String, Answered<Q, A>> asked = new LinkedHashMap<>();

        private Round(Kept<Q, A> before) {
            this.before = before;
        }

        /** @param name whose earlier question is the one to compare with */
        public A answer(String name, Q question, Function<Q, A> work) {
            Answered<Q, A> last = before.answers.get(name);
            A answer = last != null && last.question.equals(question) ? last.answer : work.apply(question);
            asked.put(name, new Answered<>(question, answer));
            return answer;
        }

        /** What was asked in it, for the plan after this one. */
        public Kept<Q, A> kept() {
            return new Kept<>(asked);
        }
    }
}
