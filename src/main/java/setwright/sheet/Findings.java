package setwright.sheet;

import java.util.List;

/**
 * What the check says about a plan, in sentences.
 *
 * @param head how the plan stands
 * @param open cautions that nobody accepted, worst first
 * @param accepted cautions that were accepted, with name and reason
 * @param notChecked checks that could not look, with what they need
 * @param fingerprint of job, shop rows and figures as printed
 */
public record Findings(
        String head, List<String> open, List<String> accepted, List<String> notChecked, String fingerprint) {
    public Findings {
        open = List.copyOf(open);
        accepted = List.copyOf(accepted);
        notChecked = List.copyOf(notChecked);
    }
}
