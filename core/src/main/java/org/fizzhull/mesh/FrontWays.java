package org.fizzhull.mesh;

/**
 * Takes single ways out of the bundles of a front, evenly by their share of the body, and keeps the stretch of each that
 * lies in the material: from the surface to where another part of it becomes nearer, less what lies behind shut facets.
 */
final class FrontWays {
    /** Steps of an even sequence in the unit square: powers of 0.7549, where x^3 + x^2 = 1 (Roberts 2018, from memory). */
    private static final double STEP_B = 0.7548776662466927;

    private static final double STEP_C = 0.5698402909980532;

    /** It starts at no even place, where a way would run into the edges of facets that lie opposite. */
    private static final double START_B = 0.1378;

    private static final double START_C = 0.6173;

    private final FrontSources sources;
    private final MedialReach reach;
    private final FacetCrossings[] shut;

    /**
     * @param sources where ways start, weighed before any is taken
     * @param reach how far they go
     * @param shut where they leave and enter the material, one or none
     */
    FrontWays(FrontSources sources, MedialReach reach, FacetCrossings[] shut) {
        this.sources = sources;
        this.reach = reach;
        this.shut = shut;
    }

    /** Takes so many ways. */
    DepthStretches take(int count) {
        DepthStretches stretches = new DepthStretches(count);
        FrontBundle bundle = new FrontBundle();
        double whole = sources.upTo(sources.count() - 1);
        int source = -1;
        double before = 0;
        double upTo = 0;
        for (int way = 0; way < count; way++) {
            boolean other = false;
            while (upTo < (way + 0.5) / count * whole) {
                before = upTo;
                upTo = sources.upTo(++source);
                other = true;
            }
            if (other) {
                sources.bundle(source, bundle);
            }
            bundle.way((START_B + way * STEP_B) % 1, (START_C + way * STEP_C) % 1);
            measure(way, whole / count / (upTo - before), bundle, stretches);
        }
        return stretches;
    }

    private void measure(int way, double weight, FrontBundle bundle, DepthStretches stretches) {
        double end = reach.along(bundle);
        stretches.add(way, weight, bundle.width, 0, end);
        for (FacetCrossings facets : shut) {
            int met = facets.find(bundle.start, bundle.direction, end);
            for (int k = 0; k < met; k++) {
                double signed = facets.entering(k) ? weight : -weight;
                stretches.add(way, signed, bundle.width, facets.distance(k), end);
            }
        }
    }
}
