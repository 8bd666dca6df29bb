package org.fizzhull.forecast.maker;

import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.draw.MakingDraw;
import org.fizzhull.forecast.draw.MixedDraw;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * Fills or presses the mould of one draw: gives the solid fraction, before any drying. May keep scratch space: one
 * packing serves one thread.
 */
public interface Packing {
    /**
     * {@return how densely the dry powders of a draw lie in the mould}
     *
     * @param draw one draw of everything uncertain
     * @param volumeRatio true volume of the mould over the entered one
     */
    Packed of(Draw draw, double volumeRatio);

    /**
     * Powders in a mould, as the drying takes them.
     *
     * @param solidFraction volume of the grains per volume of the piece, 0 to 1
     * @param trueDensity of the grains, kg/m3
     * @param blend powders and liquid of the draw, with its amounts
     * @param making uncertain values of the draw before the bath
     */
    record Packed(double solidFraction, double trueDensity, Blend blend, MakingDraw making) {}

    /**
     * {@return how densely each draw lies in the mould, for a piece that is filled or pressed}
     *
     * @param making how the piece came to be; not a piece that is only weighed
     * @param shape form of the mould, as entered
     * @throws IllegalArgumentException for a piece that is only weighed
     */
    static Packing of(Making making, Shape shape) {
        Given.all("making, shape", making, shape);
        if (making instanceof Moulded.Filled filled) {
            return of(filled, shape);
        }
        if (making instanceof Moulded.Pressed pressed) {
            return of(pressed, shape);
        }
        throw new IllegalArgumentException("a piece that is only weighed was not packed");
    }

    private static Packing of(Moulded.Filled filled, Shape shape) {
        MixedDraw mixed = new MixedDraw(filled.blend());
        return (draw, volumeRatio) -> {
            MakingDraw made = draw.making();
            MixedDraw.Mix mix = mixed.of(made);
            double trueDensity = mix.powders().trueDensity();
            double damp = 1 + mix.blend().liquid().ratio();
            double mass = filled.dampMass() + draw.massError();
            double fraction = mass / (shape.volume() * volumeRatio * trueDensity * damp);
            return new Packed(fraction, trueDensity, mix.blend(), made);
        };
    }

    private static Packing of(Moulded.Pressed pressed, Shape shape) {
        MixedDraw mixed = new MixedDraw(pressed.blend());
        MouldDimensions mould = MouldDimensions.of(shape, pressed.filling());
        return (draw, volumeRatio) -> {
            MakingDraw made = draw.making();
            MixedDraw.Mix mix = mixed.of(made);
            Press press = Press.of(mix.blend(), mix.powders(), made.pressing());
            double mean = pressed.pressure() * made.pressRatio() * made.pressRepeat() * press.meanOverTop(mould);
            return new Packed(press.solidFraction(mean), mix.powders().trueDensity(), mix.blend(), made);
        };
    }
}
