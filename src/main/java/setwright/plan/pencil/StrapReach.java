package setwright.plan.pencil;

/** A strap or edge clamp that is taken for a place: id of its row, pad to stud and stud to heel, mm. */
record StrapReach(String row, double toStud, double toHeel) {}
