package org.fizzhull.shape.kind;

/**
 * Star of n points, outer radius Ro, inner radius Ri: 2n mirror images of the triangle between the centre O, a point Vo
 * and a notch Vi. Inside one triangle the nearest boundary is its own edge Vo-Vi, so each is eroded alone.
 *
 * <p>Where the angle at Vi is above 90 degrees (a notch), the moved boundary is a straight piece and an arc about Vi;
 * the straight piece is used up at {@code d = edge tan(alpha)}, alpha being the angle at Vo, and the arc shrinks into O
 * at d = Ri. Else the figure is convex and shrinks alike. For one triangle
 * <pre>
 *   a(d) = F - d edge + d^2 bend/2                 while there is a straight piece
 *   a(d) = (offset along(d) - d^2 arc(d))/2        after that
 *   a(d) = F (1 - d/apothem)^2                     without a notch
 * </pre>
 * F area of the triangle, m2; the other symbols as the fields below. Elementary plane geometry, derived for this class.
 * Immutable.
 */
final class StarOutline implements Outline {
    /** 2n, the number of mirror images. */
    private final int triangles;
    /** Ro, m. */
    private final double outer;
    /** Ri, m. */
    private final double inner;
    /** Area of one triangle, m2. */
    private final double triangle;
    /** Length of Vo-Vi, m. */
    private final double edge;
    /** Distance of the notch from the middle line of its point, m. */
    private final double offset;
    /** Distance of the foot of that offset from the centre, m. */
    private final double foot;
    /** Angle at the notch between that offset and the centre. */
    private final double centreAngle;
    /** Cotangent of alpha less the angle of the arc: half the curvature of A(d) while there is a straight piece. */
    private final double bend;

    /** Depth at which the straight pieces are used up, m. */
    private final double straightEnds;
    /** Whether the angle at Vi is above 90 degrees, so that there is a notch. */
    private final boolean notched;

    /** A star of so many points, with its two radii, m. */
    StarOutline(int points, double outer, double inner) {
        double sector = Math.PI / points;
        double half = Math.sin(sector / 2);
        this.triangles = 2 * points;
        this.outer = outer;
        this.inner = inner;
        triangle = outer * inner * Math.sin(sector) / 2;
        // Law of cosines, written without the cancellation of nearly equal radii.
        edge = Math.sqrt((outer - inner) * (outer - inner) + 4 * outer * inner * half * half);
        offset = inner * Math.sin(sector);
        foot = inner * Math.cos(sector);
        centreAngle = Math.PI / 2 - sector;
        double tangent = offset / (outer - foot);
        bend = 1 / tangent - (centreAngle - Math.atan(tangent));
        straightEnds = Math.min(inner, edge * tangent);
        notched = inner < outer * Math.cos(sector);
    }

    @Override
    public double area(double d) {
        if (!notched) {
            double left = 1 - d / apothem();
            return triangles * triangle * left * left;
        }
        if (d <= straightEnds) {
            return triangles * (triangle - d * edge + d * d * bend / 2);
        }
        // the arc about the notch alone, between the middle line and the centre
        double along = foot - Math.sqrt(Math.max(0, (d - offset) * (d + offset)));
        return triangles * (offset * along - d * d * arc(d)) / 2;
    }

    @Override
    public double length(double d) {
        if (!notched) {
            return triangles * edge * (1 - d / apothem());
        }
        return triangles * (d <= straightEnds ? edge - d * bend : d * arc(d));
    }

    @Override
    public double[] breaks() {
        return notched ? new double[] {0, straightEnds, inner} : new double[] {0, apothem()};
    }

    /** Distance of the centre from the nearest line that touches the star: along an edge, or across two points, m. */
    @Override
    public double reach() {
        return notched ? outer * Math.cos(2 * Math.PI / triangles) : apothem();
    }

    /** Distance of the centre from the line of an edge, m. */
    private double apothem() {
        return 2 * triangle / edge;
    }

    /** Angle of what is left of the arc of radius d between the middle line and the centre. */
    private double arc(double d) {
        return centreAngle - Math.atan2(Math.sqrt(Math.max(0, (d - offset) * (d + offset))), offset);
    }
}
