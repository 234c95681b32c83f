package setwright.plan;

/**
 * A check that could not look. Never a pass, never a block.
 *
 * @param check slug of the caution or name of the working that could not be done
 * @param setUp id, or empty for the whole job
 * @param operation id, or empty for the whole set-up
 * @param needs what it would need, in words
 */
public record NotChecked(String check, String setUp, String operation, String needs) {}
