package setwright.job;

/** A job with something new in it, and the id of that. */
public record Added(Job job, String id) {}
