package setwright.review;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Severity;

/**
 * How a plan stands, in a sentence or two.
 *
 * @param stops open ones
 * @param cautions open ones
 * @param accepted stops and cautions that somebody accepted
 * @param found what was found
 * @param looked how many checks looked, and how many could not, with what they need
 */
public record Verdict(int stops, int cautions, int accepted, String found, String looked) {

    public static Verdict of(Findings findings) {
        List<Caution> stops = findings.open(Severity.STOP);
        int cautions = findings.open(Severity.CAUTION).size();
        int acceptedStops = findings.accepted(Severity.STOP).size();
        int accepted = acceptedStops + findings.accepted(Severity.CAUTION).size();
        String found = stops.isEmpty() ? nothing(acceptedStops) : doNotRun(stops);
        return new Verdict(stops.size(), cautions, accepted, found + counted(cautions), looked(findings));
    }

    /** Found and looked together. */
    public String sentence() {
        return found + " " + looked;
    }

    private static String nothing(int acceptedStops) {
        return switch (acceptedStops) {
            case 0 -> "Nothing found that stops this plan.";
            case 1 -> "Nothing found that stops this plan but one that the lead accepted.";
            default -> "Nothing found that stops this plan but " + acceptedStops + " that the lead accepted.";
        };
    }

    /** The first of the stops in its first sentence, and how many more. */
    private static String doNotRun(List<Caution> stops) {
        String first = stops.get(0).message().split("(?<=[.;]) ", 2)[0];
        String more = stops.size() == 1 ? "" : " And " + (stops.size() - 1) + " more that say so.";
        return "Do not run: " + first.substring(0, first.length() - 1) + "." + more;
    }

    private static String counted(int cautions) {
        return switch (cautions) {
            case 0 -> "";
            case 1 -> " 1 caution.";
            default -> " " + cautions + " cautions.";
        };
    }

    private static String looked(Findings findings) {
        String looked = findings.looked() == 1 ? "1 check looked" : findings.looked() + " checks looked";
        int could = findings.notChecked().size();
        return could == 0 ? looked + "." : looked + ", " + could + " could not (" + why(findings.missing()) + ").";
    }

    private static String why(Map<String, Integer> missing) {
        return missing.entrySet().stream()
                .map(each ->
                        each.getValue() == 1 ? "needs " + each.getKey() : each.getValue() + " need " + each.getKey())
                .collect(Collectors.joining("; "));
    }
}
