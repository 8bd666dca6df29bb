package org.fizzhull.validation.check;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.kind.Star;
import org.fizzhull.validation.table.Inputs;

/** Shapes and directions from the inputs of a row; sizes in mm. */
final class Bodies {
    private Bodies() {}

    static Shape shape(Inputs in) {
        String kind = in.word("shape");
        return switch (kind) {
            case "sphere" -> {
                double seam = in.has("seam_mm") ? in.millimetres("seam_mm") : 0;
                yield Sphere.ofDiameterAndSeam(2 * in.millimetres("R_mm"), seam);
            }
            case "cap" -> cap(in.millimetres("R_mm"), in.millimetres("h_mm"));
            case "bowl" -> {
                double outer = in.millimetres("R_mm");
                yield Bowl.ofDiameterAndWall(2 * outer, outer - in.millimetres("r_mm"));
            }
            case "puck" -> {
                double edge = in.has("e_mm") ? in.millimetres("e_mm") : 0;
                yield Puck.ofDiameterHeightAndEdge(2 * in.millimetres("R_mm"), in.millimetres("H_mm"), edge);
            }
            case "block" ->
                Block.ofSidesAndEdge(
                        in.millimetres("a_mm"),
                        in.millimetres("b_mm"),
                        in.millimetres("c_mm"),
                        in.has("e_mm") ? in.millimetres("e_mm") : 0);
            case "cone" -> {
                double top = in.has("R2_mm") ? in.millimetres("R2_mm") : 0;
                yield Cone.ofDiameterHeightAndTop(2 * in.millimetres("R_mm"), in.millimetres("H_mm"), 2 * top);
            }
            case "ring" -> {
                double tube = in.millimetres("r_mm");
                yield Ring.ofDiameterAndTube(2 * (in.millimetres("R_mm") + tube), 2 * tube);
            }
            case "spheroid" -> Egg.ofLengthAndDiameter(2 * in.millimetres("c_mm"), 2 * in.millimetres("a_mm"));
            case "capsule" -> {
                double r = in.millimetres("R_mm");
                yield Capsule.ofLengthAndDiameter(in.millimetres("L_mm") + 2 * r, 2 * r);
            }
            case "star" ->
                Star.ofPointsDiameterInnerAndHeight(
                        (int) in.number("n"),
                        2 * in.millimetres("Ro_mm"),
                        2 * in.millimetres("Ri_mm"),
                        in.millimetres("H_mm"));
            case "heart" ->
                Heart.ofWidthAndHeight(in.millimetres("q_mm") * (1 + Math.sqrt(0.5)), in.millimetres("H_mm"));
            default -> throw new IllegalArgumentException("unknown shape " + kind);
        };
    }

    /** A cap of height h of a ball of radius R, flat face down. */
    static Dome cap(double ballRadius, double height) {
        double base = 2 * Math.sqrt(height * (2 * ballRadius - height));
        return Dome.ofDiameterAndHeight(height == ballRadius ? 2 * ballRadius : base, height);
    }

    /** A sharp cylinder of diameter 100 mm and height ratio times that. */
    static Puck cylinder(double ratio) {
        return Puck.ofDiameterAndHeight(Units.millimetres(100), Units.millimetres(100 * ratio));
    }

    /** A cube of 100 mm. */
    static Block cube() {
        double side = Units.millimetres(100);
        return Block.ofSides(side, side, side);
    }

    /** The body direction that points up. */
    static Vec3 up(Inputs in) {
        return direction(in.word("up"));
    }

    /** {@code z}, {@code -z}, {@code x}, or {@code 111} for a corner. */
    static Vec3 direction(String word) {
        return switch (word) {
            case "z" -> Vec3.UP;
            case "-z" -> new Vec3(0, 0, -1);
            case "x" -> new Vec3(1, 0, 0);
            case "111" -> new Vec3(1, 1, 1).times(1 / Math.sqrt(3));
            default -> throw new IllegalArgumentException("unknown direction " + word);
        };
    }
}
