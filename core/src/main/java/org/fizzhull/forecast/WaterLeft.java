package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.model.DryModel;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * What a weighed piece of a known recipe is made of after drying, by the central values: its water left fills pores,
 * the fizz it lost is gone.
 *
 * <p>For {@link org.fizzhull.forecast.making.Making.Weighed#dried}: {@link #after} where only the dry weight is known,
 * {@link #of} where the fill was weighed too. Courses are coarse, a few per cent of the water. Stateless.
 */
public final class WaterLeft {
    /**
     * Passes in which the fill is scaled until its course ends at the weight: mass and fill go nearly in proportion, so
     * that few are enough.
     */
    private static final int ROUNDS = 6;

    private WaterLeft() {}

    /**
     * {@return the water left in a piece that weighs so much at the end of a plan; its damp mass is inferred}
     *
     * @param shape form of the piece
     * @param blend mix of powders and liquid, per kg of dry powder
     * @param mass of the whole piece, kg
     * @param plan what happens to the piece between press and bath
     * @throws IllegalArgumentException for a plan without a phase
     * @throws Refusal for a fill that the mould cannot hold
     */
    public static Piece.Makeup after(Shape shape, Blend blend, double mass, DryingPlan plan) {
        // the fill that dries to this weight is sought, for the fill alone decides the porosity
        double own = mass - shape.insetMass();
        double fill = own;
        DryingCourse course = course(shape, blend, fill, plan);
        for (int i = 0; i < ROUNDS; i++) {
            fill *= own / course.last().mass();
            course = course(shape, blend, fill, plan);
        }
        return course.piece(shape, course.end()).makeup();
    }

    /**
     * {@return the water left in a piece pressed from {@code fill} that now weighs {@code mass}: the weighing says how
     * far along its course it is}
     *
     * @param shape form of the piece
     * @param blend mix of powders and liquid, per kg of dry powder
     * @param fill damp mass pressed into the mould, kg
     * @param mass of the whole piece now, kg
     * @param plan what happens to the piece between press and bath
     * @throws Refusal {@code weights-disagree} where the course from this fill never weighs so much
     */
    public static Piece.Makeup of(Shape shape, Blend blend, double fill, double mass, DryingPlan plan) {
        Given.all("shape, blend, plan", shape, blend, plan);
        double own = mass - shape.insetMass();
        // the course may go on beyond the plan: a piece may have dried for longer than was said
        var longer = new DryingPlan(DryModel.longer(plan.phases()));
        DryingCourse course = course(shape, blend, fill, longer);
        Optional<DryingCourse.State> now = course.whenWeighing(own);
        if (now.isPresent()) {
            return course.piece(shape, now.get().time()).makeup();
        }
        throw new Refusal(
                "weights-disagree",
                "mass",
                grams(mass) + " from a fill of " + grams(fill),
                "between " + grams(course.last().mass() + shape.insetMass()) + " and "
                        + grams(course.at(0).mass() + shape.insetMass()) + " for this mix in this air",
                "Two of your numbers disagree: weigh the fill and the piece again, or check the air.");
    }

    /** The coarse course of a fill, kg, by the central values. */
    private static DryingCourse course(Shape shape, Blend blend, double fill, DryingPlan plan) {
        var made = new Moulded.Filled(blend, fill, Optional.empty(), plan);
        PieceLimits.checkFill(shape, made);
        DryPredictor.CentralChain central = DryPredictor.central(shape, made);
        return Drying.run(central.input(), plan.phases(), central.parameters(), Resolution.COARSE);
    }

    /** A mass, kg, in grams to a tenth. */
    private static String grams(double kilograms) {
        return Math.round(10 * Units.inGrams(kilograms)) / 10.0 + " g";
    }
}
