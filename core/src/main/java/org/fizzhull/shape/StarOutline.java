package org.fizzhull.shape;

/**
 * Star of n points, outer radius Ro, inner radius Ri: 2n mirror images of the triangle between the centre O, a point Vo and
 * a notch Vi. Inside one triangle the nearest boundary is its own edge Vo-Vi, so each is eroded alone. Where the
 * angle at Vi is above 90 degrees (a notch), the moved boundary is a straight piece and an arc about Vi; the straight
 * piece is used up at {@code d = edge tan(alpha)}, alpha being the angle at Vo, and the arc shrinks into O at d = Ri.
 * Else the figure is convex and shrinks alike. Elementary plane geometry, derived for this class.
 */
record StarOutline(int points, double outer, double inner) implements Outline {
    @Override
    public double area(double d) {
        return 2 * points * part(d);
    }

    @Override
    public double length(double d) {
        return 2 * points * partLength(d);
    }

    @Override
    public double[] breaks() {
        return notched() ? new double[] {0, straightEnds(), inner} : new double[] {0, apothem()};
    }

    double edge() {
        double half = Math.sin(Math.PI / (2 * points));
        // Law of cosines, written without the cancellation of nearly equal radii.
        return Math.sqrt((outer - inner) * (outer - inner) + 4 * outer * inner * half * half);
    }

    private double triangle() {
        return outer * inner * Math.sin(Math.PI / points) / 2;
    }

    private boolean notched() {
        return inner < outer * Math.cos(Math.PI / points);
    }

    /** Distance of the centre from the line of an edge, m. */
    private double apothem() {
        return outer * inner * Math.sin(Math.PI / points) / edge();
    }

    /** Distance of the notch from the middle line of its point, m. */
    private double notchOffset() {
        return inner * Math.sin(Math.PI / points);
    }

    /** tan(alpha) of the half angle at a point. */
    private double tangent() {
        return notchOffset() / (outer - inner * Math.cos(Math.PI / points));
    }

    private double straightEnds() {
        return Math.min(inner, edge() * tangent());
    }

    /** Angle of the arc about the notch: pi/n + alpha is what the angle at the notch lacks of pi. */
    private double notchAngle() {
        return Math.PI / 2 - Math.PI / points - Math.atan(tangent());
    }

    private double part(double d) {
        if (!notched()) {
            double left = 1 - d / apothem();
            return triangle() * left * left;
        }
        if (d <= straightEnds()) {
            return triangle() - d * edge() + d * d * (1 / tangent() - notchAngle()) / 2;
        }
        double m = notchOffset();
        double along = inner * Math.cos(Math.PI / points) - Math.sqrt(Math.max(0, (d - m) * (d + m)));
        return (m * along - d * d * arc(d)) / 2;
    }

    private double partLength(double d) {
        if (!notched()) {
            return edge() * (1 - d / apothem());
        }
        return d <= straightEnds() ? edge() - d * (1 / tangent() - notchAngle()) : d * arc(d);
    }

    /** Angle of what is left of the arc of radius d between the middle line and the centre. */
    private double arc(double d) {
        double m = notchOffset();
        return Math.PI / 2 - Math.PI / points - Math.atan2(Math.sqrt(Math.max(0, (d - m) * (d + m))), m);
    }
}
