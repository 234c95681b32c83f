package setwright.job;

/**
 * Why something was taken though the ranking has another first.
 *
 * @param of id of the set-up whose holding it is, or of the operation whose holder it is
 */
public record Chosen(String of, String reason) {}
