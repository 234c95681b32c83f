package setwright.job;

/**
 * One part number to be made in some quantity.
 *
 * @param plan what people decided; undo covers it, the fingerprint is over it
 * @param record what happened: ticks, readings, remarks, acceptances, sign-offs; append-only
 */
public record Job(JobPlan plan, JobRecord record) {
    public Job withPlan(JobPlan changed) {
        return new Job(changed, record);
    }

    public Job withRecord(JobRecord changed) {
        return new Job(plan, changed);
    }
}
