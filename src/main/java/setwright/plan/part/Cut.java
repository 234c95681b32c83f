package setwright.plan.part;

/**
 * What milling one feature asks, on the table.
 *
 * @param floor height of its floor over the table
 * @param pass deepest pass, mm
 */
record Cut(Milled milled, double floor, double pass) {}
