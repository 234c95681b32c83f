package setwright.caution.choice;

import java.util.List;
import setwright.job.Job;

/**
 * Something that may be taken.
 *
 * @param id as the job or the shop names it
 * @param text in the words of the shop
 * @param against what speaks against it without any trial; empty where it is worth one
 * @param doubts what no check looks at; counted as a caution each
 * @param now whether the plan has it
 * @param changed the job that takes it
 */
record Candidate(String id, String text, List<String> against, List<String> doubts, boolean now, Job changed) {
    Candidate {
        against = List.copyOf(against);
        doubts = List.copyOf(doubts);
    }
}
