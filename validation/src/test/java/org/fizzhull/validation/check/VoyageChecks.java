package org.fizzhull.validation.check;

import java.util.function.DoubleUnaryOperator;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedShape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;
import org.fizzhull.voyage.BrownLawler2003;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Lamb1932;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.fizzhull.voyage.result.Voyage;

/** The full voyage against closed forms and published times; drag and added mass. */
public final class VoyageChecks extends Bindings {
    public VoyageChecks() {
        super("voyage");
        bind("drag", in -> BrownLawler2003.coefficient(in.number("Re")));
        bind("added-mass", in -> Lamb1932.oblate(in.number("flatness")));
        bind("disc", in -> Lamb1932.oblate(in.number("flatness")) * 4 * Math.PI / 3 * in.number("flatness"));
        bind("terminal", VoyageChecks::terminal);
        bind("terminal-fall", VoyageChecks::terminalFall);
        bind("square-fall", VoyageChecks::squareFall);
        bind("shrinking", VoyageChecks::shrinking);
        bind("one-side-up", VoyageChecks::oneSideUp);
        bind("cube-root", VoyageChecks::cubeRoot);
        bind("carbon", VoyageChecks::carbon);
        bind("ball-fizz", VoyageChecks::ballFizz);
        bind("pocket", VoyageChecks::pocket);
        bind("tablet-time", in -> Math.log10(tabletLife(in) / in.number("published_s")));
        bind("tablet-within", in -> tabletLife(in) <= in.number("limit_s") ? 1 : 0);
    }

    /** Speed at which the drag of a sphere balances its weight, m/s, by halving. */
    private static double terminal(Inputs in) {
        double t = in.celsius("t_C");
        double d = in.millimetres("d_mm");
        double water = Kell1975.density(t);
        double viscosity = Patek2009Viscosity.viscosity(t) / water;
        double weight = Math.abs(in.number("density") - water) * d * PhysicalConstants.GRAVITY * 4 / 3;
        double low = 0;
        double high = 10;
        for (int i = 0; i < 60; i++) {
            double u = (low + high) / 2;
            if (BrownLawler2003.coefficient(u * d / viscosity) * water * u * u < weight) {
                low = u;
            } else {
                high = u;
            }
        }
        return low;
    }

    /** Speed of a fall in the last second above the bottom, m/s. */
    private static double terminalFall(Inputs in) {
        Sailing s = Sailing.of(in);
        double bottom = event(s.voyage(), Voyage.Event.Kind.BOTTOM);
        int to = s.rowAt(bottom) - 1;
        int from = s.rowAt(bottom - 1);
        Voyage.Series c = s.series();
        return (c.centreDepth()[to] - c.centreDepth()[from]) / (c.time()[to] - c.time()[from]);
    }

    /**
     * A cube falls with the constant drag of an edged body, 1.05: x = (U^2/g') ln cosh(b + g' t/U). The start under
     * water is taken from two rows of the series, the farthest row above the bottom is predicted: how far off, mm.
     */
    private static double squareFall(Inputs in) {
        Sailing s = Sailing.of(in);
        double side = s.shape().extents().height();
        double water = Kell1975.density(in.celsius("t_C"));
        double sunken = s.piece().density() - water;
        double terminal = Math.sqrt(2 * sunken * side * PhysicalConstants.GRAVITY / (1.05 * water));
        // added mass of the spheroid as wide as a disc of the cube's plan area
        double added = Lamb1932.oblate(Math.sqrt(Math.PI / 4));
        double start = sunken * PhysicalConstants.GRAVITY / (s.piece().density() + added * water);
        Voyage.Series c = s.series();
        int first = 0;
        while (c.centreDepth()[first] < side) {
            first++;
        }
        int last = s.rowAt(event(s.voyage(), Voyage.Event.Kind.BOTTOM)) - 1;
        double length = terminal * terminal / start;
        double near = (c.time()[first + 1] - c.time()[first]) * start / terminal;
        double moved = Math.exp((c.centreDepth()[first + 1] - c.centreDepth()[first]) / length);
        double part = (moved - Math.cosh(near)) / Math.sinh(near);
        double speed = Math.log((1 + part) / (1 - part)) / 2;
        double far = (c.time()[last] - c.time()[first]) * start / terminal;
        double way = length * (Math.log(Math.cosh(speed + far)) - Math.log(Math.cosh(speed)));
        return 1e3 * (c.centreDepth()[last] - c.centreDepth()[first] - way);
    }

    /** Largest deviation of the carbon dioxide freed from the closed form of the body, over the whole of it. */
    private static double shrinking(Inputs in) {
        Sailing s = Sailing.of(in);
        DoubleUnaryOperator left = left(in);
        double late = s.late();
        double worst = 0;
        for (int i = s.rowAt(1); i < s.series().rows(); i++) {
            double share = left.applyAsDouble(s.speed() * (s.series().time()[i] - late));
            worst = Math.max(worst, Math.abs(s.freed(i) / s.whole() - (1 - share)));
        }
        return worst;
    }

    private static DoubleUnaryOperator left(Inputs in) {
        return switch (in.word("law")) {
            case "ball" -> {
                double r = in.millimetres("R_mm");
                yield e -> Math.pow(1 - e / r, 3);
            }
            case "slab" -> {
                double a = in.millimetres("a_mm");
                double b = in.millimetres("b_mm");
                double c = in.millimetres("c_mm");
                yield e -> (1 - 2 * e / a) * (1 - 2 * e / b) * (1 - 2 * e / c);
            }
            case "ring" -> {
                double r = in.millimetres("tube_mm") / 2;
                yield e -> (1 - e / r) * (1 - e / r);
            }
            default -> throw new IllegalArgumentException(in.word("law"));
        };
    }

    /** Largest deviation of the cube root of the mass from a straight line in time, over its start. */
    private static double cubeRoot(Inputs in) {
        Sailing s = Sailing.of(in);
        double life = in.millimetres("R_mm") / s.speed();
        double worst = 0;
        for (int i = s.rowAt(1); i < s.series().rows(); i++) {
            double line = 1 - (s.series().time()[i] - s.late()) / life;
            worst = Math.max(
                    worst, Math.abs(Math.cbrt(s.series().mass()[i] / s.piece().mass()) - line));
        }
        return worst;
    }

    /** Largest gap in the books of carbon at any output time, over the whole, with the usual parameters. */
    private static double carbon(Inputs in) {
        Shape shape = ShapeText.read(in.word("shape"));
        Piece.Makeup makeup = new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, in.number("xi"));
        Piece piece = new Piece(shape, in.number("g") / 1e3, makeup);
        Bath bath = Bath.at(in.celsius("t_C"));
        Voyage.Series s = FullVoyage.of(VoyageForm.of(shape, Release.valueOf(in.word("release"))), bath)
                .run(piece, FizzParameters.standard(), VoyageParameters.standard())
                .series();
        double whole = piece.bodyMass() * makeup.gasCapacity();
        double worst = 0;
        for (int i = 0; i < s.rows(); i++) {
            double body = (s.mass()[i] - shape.insetMass()) / piece.bodyMass();
            worst = Math.max(worst, Math.abs((s.gas()[i] + s.dissolved()[i]) / whole - (1 - body)));
            worst = Math.max(worst, Math.abs(s.left()[i] / whole - body));
        }
        return worst;
    }

    private static double ballFizz(Inputs in) {
        Sailing s = Sailing.of(in);
        double life = in.millimetres("R_mm") / s.speed();
        Voyage.Series c = s.series();
        return switch (in.word("of")) {
            case "tau_s" -> (s.voyage().fizzTime() - s.late()) / (1 - Math.cbrt(0.01));
            case "gas_L" -> 1e3 * s.voyage().dryVolume(s.whole());
            case "first_L_per_s" -> {
                int from = s.rowAt(2);
                double rate = (s.freed(from + 1) - s.freed(from)) / (c.time()[from + 1] - c.time()[from]);
                double middle = 1 - ((c.time()[from + 1] + c.time()[from]) / 2 - s.late()) / life;
                yield 1e3 * s.voyage().dryVolume(rate) / (middle * middle);
            }
            case "left_at_half_percent" -> {
                double half = life / 2 + s.late();
                int to = s.rowAt(half);
                double t = (half - c.time()[to - 1]) / (c.time()[to] - c.time()[to - 1]);
                yield 100 * (1 - (s.freed(to - 1) + t * (s.freed(to) - s.freed(to - 1))) / s.whole());
            }
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    /**
     * An upside-down bowl that sank lifts off when its pocket, squeezed by Boyle's law, carries what is left:
     * V = V_pocket p/(p + rho g h) rho/(rho_b - rho). Volume left at the event over that.
     */
    private static double pocket(Inputs in) {
        Sailing s = Sailing.of(in);
        double water = Kell1975.density(in.celsius("t_C"));
        int at = s.rowAt(event(s.voyage(), Voyage.Event.Kind.LIFT_OFF));
        double deep = s.series().centreDepth()[at];
        double squeeze = PhysicalConstants.ATMOSPHERE
                / (PhysicalConstants.ATMOSPHERE + water * PhysicalConstants.GRAVITY * deep);
        double pocket = s.shape().hollow().orElseThrow().volume() * squeeze;
        double body = s.series().mass()[at] / s.piece().density();
        return body / (pocket * water / (s.piece().density() - water));
    }

    /** How long a tablet lasts with the usual parameters, s. */
    private static double tabletLife(Inputs in) {
        Shape shape = ShapeText.read(in.word("shape"));
        Piece piece = new Piece(shape, in.number("density") * shape.volume(), Piece.Makeup.usual());
        Bath bath = Bath.at(in.celsius("t_C")).withVolume(in.number("L") / 1e3).withDepth(in.number("depth_m"));
        return FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), bath)
                .run(piece, FizzParameters.standard(), VoyageParameters.standard())
                .fizzTime();
    }

    /**
     * Life of a floating body without gas or wet skin, to a hundredth unless another share left is told, over that of
     * one with every face wet, to a hundredth.
     */
    private static double oneSideUp(Inputs in) {
        Shape shape = floating(in);
        double left = in.has("left") ? in.number("left") : 0.01;
        Bath bath = Bath.at(Units.celsius(38)).withDepth(0.35);
        Piece piece = new Piece(
                shape,
                in.number("s") * Kell1975.density(Units.celsius(38)) * shape.volume(),
                new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, Piece.Makeup.USUAL_GAS_CAPACITY));
        double speed = 1e-5;
        Voyage.Series series = FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), bath)
                .run(piece, new FizzParameters(speed, 0, 0, 0, 1e-3, 0, 0, 1), new VoyageParameters(0, 0))
                .series();
        int to = series.rows() - 1;
        while (series.mass()[to - 1] < left * piece.mass()) {
            to--;
        }
        double part = (series.mass()[to - 1] - left * piece.mass()) / (series.mass()[to - 1] - series.mass()[to]);
        double life = series.time()[to - 1] + part * (series.time()[to] - series.time()[to - 1]);
        DepthProfile profile = shape.depthProfile(DepthProfile.Exposure.ALL);
        double low = 0;
        double high = profile.deepest();
        for (int pass = 0; pass < 50; pass++) {
            double e = (low + high) / 2;
            if (profile.volume(e) > 0.01 * shape.volume()) {
                low = e;
            } else {
                high = e;
            }
        }
        return speed * life / low;
    }

    /** The body of such a row, in closed form or as a mesh. */
    private static Shape floating(Inputs in) {
        double diameter = in.has("D_mm") ? in.millimetres("D_mm") : 0;
        double height = in.has("H_mm") ? in.millimetres("H_mm") : 0;
        return switch (in.word("body")) {
            case "ball" -> Sphere.ofDiameter(diameter);
            case "dome" -> Dome.ofDiameter(diameter);
            case "puck" -> Puck.ofDiameterAndHeight(diameter, height);
            case "cone" -> Cone.ofDiameterHeightAndTop(diameter, height, in.millimetres("top_mm"));
            case "tube" -> Ring.ofDiameterAndTube(diameter, in.millimetres("tube_mm"));
            case "bowl" -> Bowl.ofDiameterAndWall(diameter, in.millimetres("wall_mm"));
            case "block" -> Block.ofSides(in.millimetres("L_mm"), in.millimetres("W_mm"), height);
            case "heart" -> Heart.ofWidthAndHeight(in.millimetres("W_mm"), height);
            case "heart mesh" -> {
                Heart heart = Heart.ofWidthAndHeight(in.millimetres("W_mm"), height);
                yield MeshShape.of(
                        "heart.stl", "m", ((PolyhedronHull) heart.hull().orElseThrow()).mesh());
            }
            case "ring" ->
                RevolvedShape.of(
                        "ring.csv",
                        Profile2D.builder()
                                .line(0, diameter / 2, height, diameter / 2)
                                .inner()
                                .line(0, in.millimetres("hole_mm") / 2, height, in.millimetres("hole_mm") / 2)
                                .build());
            case "lens" ->
                RevolvedShape.of(
                        "lens.csv",
                        Profile2D.builder()
                                .arc(height / 2, 0, diameter / 2, height / 2, 1, 0, height)
                                .build());
            default -> throw new IllegalArgumentException(in.word("body"));
        };
    }

    private static double event(Voyage voyage, Voyage.Event.Kind kind) {
        for (Voyage.Event event : voyage.events()) {
            if (event.kind() == kind) {
                return event.time();
            }
        }
        throw new IllegalStateException("no " + kind + " in " + voyage.events());
    }
}
