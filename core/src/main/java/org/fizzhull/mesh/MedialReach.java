package org.fizzhull.mesh;

/**
 * How far a way goes inwards from a surface, at right angles to it, before another part of the surface becomes nearer:
 * the distance to the medial surface. A ball that touches the surface where the way starts is shrunk until it holds no
 * other point of it (Ma, Bae and Choi 2012, Vis. Comput. 28, 7, from memory).
 */
final class MedialReach {
    /** A ball is small enough when it would shrink by less than this share: the next step would by its square. */
    private static final double SHRUNK = 1e-4;

    /**
     * Where ways meet, nearly all facets are nearly equally far, and a bundle this much narrower than at its start holds
     * next to nothing: there the answer from a ball that is too large by no more than the second share will do.
     */
    private static final double NARROW = 0.1;

    private static final double MEETING = 0.05;

    /** A rough surface shrinks a ball by ever so little: some are enough, since usually it takes two or three. */
    private static final int TRIES = 60;

    /** First try beside the last answer: too large rather than too small. */
    private static final double FARTHER = 1.03;

    private final EmptyBall ball;
    private final double farthest;
    private double last;

    /**
     * @param open facets whose distances count
     * @param farthest where a way that meets nothing ends, m
     * @param first guess, m
     */
    MedialReach(FacetTree open, double farthest, double first) {
        this.ball = new EmptyBall(open);
        this.farthest = farthest;
        this.last = first;
    }

    /** Length of the way that a bundle has chosen, m. */
    double along(FrontBundle bundle) {
        double limit = Math.min(farthest, bundle.focus());
        double r = Math.min(limit, FARTHER * last);
        boolean shrunk = false;
        for (int tries = 0; tries < TRIES; tries++) {
            double next = ball.shrunk(bundle.start, bundle.direction, r);
            if (next < r) {
                shrunk = true;
                boolean meeting = Math.abs(bundle.at(next)) < NARROW * bundle.at(0);
                if (next > r * (1 - (meeting ? MEETING : SHRUNK))) {
                    last = next;
                    return next;
                }
                r = next;
            } else if (shrunk || r >= limit) {
                last = r;
                return r;
            } else {
                r = Math.min(limit, 2 * r);
            }
        }
        last = r;
        return r;
    }
}
