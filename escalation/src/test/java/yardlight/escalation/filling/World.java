package yardlight.escalation.filling;

/**
 * What fillings are drawn from. Nobody publishes such figures: they are made up after common practice, and each is varied in
 * the second table of docs/tank-study.md.
 *
 * @param slugs the largest share of the inflow that comes in slugs; each filling has its own, from 0 on
 * @param slugEvery the longest mean time between two slugs in minutes, from 3 on
 * @param noise the largest standard deviation of the sensor in ft, from 0.005 on
 * @param drift the standard deviation of the inflow about its mean as a share of it; it comes and goes over hours
 * @param steps the share of fillings in which the inflow changes at once, by 15 to 60 of 100
 */
record World(double slugs, double slugEvery, double noise, double drift, double steps) {

    static final World AS_CHOSEN = new World(0.3, 15, 0.05, 0.1, 0.2);
}
