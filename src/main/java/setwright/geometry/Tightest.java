package setwright.geometry;

/** A place that may turn out the tightest, with all that is needed to describe it. */
interface Tightest {
    Nearest nearest(Section section, Body body);
}
