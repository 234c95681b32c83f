package setwright.holding.balance;

import java.util.List;

/**
 * A load whose factor is asked.
 *
 * @param column the load scaled to length one
 * @param size how many newtons one stands for
 * @param bound its factor is known to be no more
 */
record Question(Load load, double[] column, double size, double bound) {
    static Question of(Cones cones, Load load) {
        double[] column = cones.load(load);
        double size = Math.sqrt(Cones.dot(column, column));
        for (int i = 0; i < column.length && size > 0; i++) {
            column[i] /= size;
        }
        return new Question(load, column, size, Double.POSITIVE_INFINITY);
    }

    /** The one with the lowest bound; among equals the largest load, then the first. */
    static Question mostUrgent(List<Question> open) {
        Question most = open.get(0);
        for (Question question : open) {
            if (question.bound < most.bound || question.bound == most.bound && question.size > most.size) {
                most = question;
            }
        }
        return most;
    }

    /** The motion that gives way under one load bounds the factor of every other load that does work on it. */
    Question boundedBy(Cones cones, Solution solution) {
        double power = Cones.dot(solution.dual(), column) * size;
        if (!(power > 0)) {
            return this;
        }
        double limit = Cones.dot(solution.dual(), cones.right()) * cones.force() / power;
        return limit < bound ? new Question(load, column, size, limit) : this;
    }
}
