package setwright.window.model;

/**
 * How the plan stands, in one sentence.
 *
 * @param badge the worst that is open
 * @param working what the background is at; empty while it rests
 */
public record Head(Badge badge, String sentence, String working) {}
