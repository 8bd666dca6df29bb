package org.fizzhull.pressing.powder;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;

/**
 * One mix under a press: from pressure to weight, from a weighed fill to pressure, and from both to the press scale.
 *
 * <p>Solid fraction phi by {@code K(P) = K0 (1 + P/Pk)} and the compressible packing model, corrected for damp bulking
 * and spring-back and capped where the liquid fills every pore; then
 *
 * <pre>  m = phi rho_s (1 + M) V,   P_mean = P_top (1 - exp(-x))/x,   x = 4 mu Kr H/D</pre>
 *
 * <p>m damp mass (kg), rho_s true density of the powder (kg/m3), M liquid per powder (kg/kg), V volume of the mould
 * (m3), P pressure (Pa), mu friction at the wall, Kr pressure on the wall over pressure along the axis, H depth of
 * powder (m), D width of the mould (m).
 *
 * <p>Range: 0 to 2 MPa at the top. Error: 0.015 on phi for the packing model alone; the press scale Pk is known to a
 * factor 3 until a piece was weighed. Equations and sources: docs/physics/packing.md, 3 to 7. Methods whose name ends in
 * {@code Draw} are for the draws of a forecast: they refuse nothing, tell nothing and work out no second opinion.
 *
 * <pre>{@code
 * MouldDimensions mould = MouldDimensions.of(shape, MouldDimensions.Filling.usual(shape));
 * Pressed piece = Press.of(blend).press(PressWord.FIRM.pressure(), mould);
 * double mass = piece.dampMass(); // kg, damp
 * }</pre>
 *
 * <p>Immutable; one draw of a forecast is one {@code Press}. Makes {@link Pressed}, which {@code chain.DampPiece} takes on.
 */
public final class Press {
    /** Accuracy of ln(1 + P/1 kPa) in a draw: pressures of draws are only sorted. */
    private static final double DRAW_ACCURACY = 1e-7;

    /** The mix with its parameters, and how it feels. */
    private final DampFeel damp;

    private final DampPacking packing;
    private final DeLarrard1999 model = new DeLarrard1999();

    private Press(DampFeel damp) {
        this.damp = damp;
        this.packing = new DampPacking(damp.parameters(), damp.powders(), damp.liquid());
    }

    /**
     * {@return a mix with the table's densities and the default parameters}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public static Press of(Blend blend) {
        return of(blend, Powders.of(blend), PressingParameters.standard());
    }

    /**
     * {@return a mix with chosen densities and parameters: one draw}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     * @param powders the same powders, at the densities of the draw
     * @param parameters parameters of the draw
     */
    public static Press of(Blend blend, Powders powders, PressingParameters parameters) {
        Given.all("parameters", parameters);
        return new Press(new DampFeel(
                parameters, blend, powders, blend.liquid(), EarlyReaction.standard(blend), MixingRoom.standard()));
    }

    /**
     * {@return the same mix, to be dried in another room and with other reaction rates}
     *
     * @param otherRoom air that the piece will dry in
     * @param otherReaction rates of the reaction in the bowl
     */
    public Press in(MixingRoom otherRoom, EarlyReaction otherReaction) {
        Given.all("otherRoom, otherReaction", otherRoom, otherReaction);
        return new Press(
                new DampFeel(damp.parameters(), damp.blend(), damp.powders(), damp.liquid(), otherReaction, otherRoom));
    }

    /**
     * {@return the same powders with another amount of the same liquid}
     *
     * @param ratio liquid per dry powder, kg/kg, 0 or more
     */
    public Press withLiquid(double ratio) {
        Given.finite("ratio", ratio);
        return new Press(new DampFeel(
                damp.parameters(),
                damp.blend(),
                damp.powders(),
                damp.liquid().withRatio(ratio),
                damp.reaction(),
                damp.room()));
    }

    /**
     * {@return the piece that a pressure makes}
     *
     * @param topPressure pressure at the top of the mould, Pa, 0 to 2 MPa
     * @param mould mould that is filled
     * @throws Refusal {@code out-of-range} for another pressure
     */
    public Pressed press(double topPressure, MouldDimensions mould) {
        PressRange.check(topPressure);
        return pressed(topPressure, mould, false);
    }

    /**
     * {@return as {@link #press} for one of many draws: a pressure beyond 2 MPa counts as 2 MPa}
     *
     * @param topPressure pressure at the top of the mould, Pa, 0 or more
     * @param mould mould that is filled
     */
    public Pressed pressDraw(double topPressure, MouldDimensions mould) {
        return pressed(Math.min(topPressure, DampPacking.MOST_PRESSURE), mould, true);
    }

    /**
     * {@return the piece that a damp mass of this mix makes when it fills the mould, with the pressure that it implies}
     *
     * @param dampMass mass of the damp mix, kg
     * @param mould mould that is filled
     * @throws Refusal {@code out-of-range} for no mass, {@code does-not-fit} for more than the mould can hold
     */
    public Pressed fill(double dampMass, MouldDimensions mould) {
        double phi = solidFractionOf(dampMass, mould);
        double mean = packing.pressureOf(phi);
        if (Double.isNaN(mean) || phi > packing.cap()) {
            double most = Math.min(packing.cap(), packing.solidFraction(DampPacking.MOST_PRESSURE));
            throw new Refusal(
                    "does-not-fit",
                    "fill",
                    grams(dampMass),
                    "up to " + grams(dampMassOf(most, mould)) + " of this mix in this mould",
                    "Two of your numbers disagree: measure the mould with water, or weigh the fill again.");
        }
        List<Notice> notices = new ArrayList<>();
        if (mean == 0) {
            notices.add(new Notice(
                    "filled-loosely",
                    "This is less than the mould holds when the mix is just poured in (about "
                            + grams(dampMassOf(packing.solidFraction(0), mould))
                            + "): no pressure can be read from it."));
        }
        return result(mean / meanOverTop(mould), mean, phi, mould, notices, opinion(mean));
    }

    /**
     * {@return as {@link #fill} for one of many draws: 2 MPa stands for every pressure beyond}
     *
     * @param dampMass mass of the damp mix, kg
     * @param mould mould that is filled
     */
    public Pressed fillDraw(double dampMass, MouldDimensions mould) {
        double phi = solidFractionOf(dampMass, mould);
        double mean = packing.pressureOf(phi, DRAW_ACCURACY);
        double counted = Double.isNaN(mean) ? DampPacking.MOST_PRESSURE : mean;
        return result(
                Math.min(DampPacking.MOST_PRESSURE, counted / meanOverTop(mould)),
                counted,
                Math.min(phi, packing.cap()),
                mould,
                new ArrayList<>(),
                0);
    }

    /**
     * Finds how the same powders under the same press feel with each of several amounts of the same liquid; the packing of the
     * dry powders is worked out once. More liquid never cures what is too wet, so the amounts after the first such are not
     * computed.
     *
     * @param ratios liquid per dry powder, kg/kg, rising
     * @param topPressure pressure at the top of the mould, Pa; beyond 2 MPa counts as 2 MPa
     * @param mould mould that is filled
     * @param feels takes the feel of each amount, as long as {@code ratios}
     */
    public void feels(double[] ratios, double topPressure, MouldDimensions mould, Pressed.Feel[] feels) {
        double top = Math.min(topPressure, DampPacking.MOST_PRESSURE);
        double mean = top * meanOverTop(mould);
        double dry = packing.dry(mean);
        boolean wet = false;
        for (int i = 0; i < ratios.length; i++) {
            feels[i] = wet ? Pressed.Feel.TOO_WET : withLiquid(ratios[i]).feel(dry, mean, mould);
            wet = feels[i] == Pressed.Feel.TOO_WET;
        }
    }

    /** The feel from phi of the dry damp.powders(), {@link DampPacking#dry}, at a mean pressure, Pa. */
    private Pressed.Feel feel(double dry, double mean, MouldDimensions mould) {
        double phi = Math.min(packing.cap(), packing.damp(dry, mean));
        double saturation = packing.saturation(phi);
        return damp.feel(mean, phi, saturation, damp.strength(phi, saturation), mould, new ArrayList<>(0));
    }

    /** The piece of a pressure within range; a draw has no second opinion. */
    private Pressed pressed(double topPressure, MouldDimensions mould, boolean draw) {
        List<Notice> notices = new ArrayList<>();
        double mean = topPressure * meanOverTop(mould);
        double phi = packing.solidFraction(mean);
        if (phi > packing.cap()) {
            phi = packing.cap();
            notices.add(new Notice("pores-full", "The liquid fills every pore; pressing harder only squeezes it out."));
        }
        return result(topPressure, mean, phi, mould, notices, draw ? 0 : opinion(mean));
    }

    /** phi of the second packing model less that of the first, at a mean pressure, Pa. */
    private double opinion(double mean) {
        return packing.solidFraction(new YuStandish1991(), mean) - packing.solidFraction(mean);
    }

    /**
     * {@return the press scale Pk, Pa, that makes this mix weigh that much in that mould under that top pressure: the
     * calibration of the press scale by one weighed piece}
     *
     * @param dampMass mass of the damp mix, kg
     * @param topPressure pressure at the top of the mould, Pa, above 0
     * @param mould mould that is filled
     * @throws Refusal {@code out-of-range} for no mass or pressure, {@code no-calibration} where the mass is that of a fill as
     *     poured or less, more than the mix can be packed to, or as much as fills every pore with liquid
     */
    public double pressScale(double dampMass, double topPressure, MouldDimensions mould) {
        if (!(topPressure > 0)) {
            throw new Refusal(
                    "out-of-range",
                    "press",
                    topPressure / 1e3 + " kPa",
                    "more than 0 kPa",
                    "A mix that is only poured in has no press: give some.");
        }
        if (solidFractionOf(dampMass, mould) >= packing.cap()) {
            throw new Refusal(
                    "no-calibration",
                    "fill",
                    grams(dampMass),
                    "less than " + grams(dampMassOf(packing.cap(), mould)) + ", at which the liquid fills every pore",
                    "More of this mix does not go into this mould, however hard it is pressed: weigh the piece again, and"
                            + " measure the mould with water.");
        }
        double mean = topPressure * meanOverTop(mould);
        double squeeze = squeeze(dampMass, mean, mould);
        if (!(squeeze > 0) || Double.isInfinite(squeeze)) {
            throw new Refusal(
                    "no-calibration",
                    "fill",
                    grams(dampMass),
                    squeeze > 0
                            ? "less than the mix can be packed to"
                            : "more than the mould holds when just poured in",
                    "Weigh the powders by the cup first: this piece and the table's densities disagree.");
        }
        return mean / squeeze;
    }

    /**
     * {@return as {@link #pressScale} for one of many draws: NaN where no press scale does, also where the pores are
     * full}
     *
     * @param dampMass mass of the damp mix, kg
     * @param topPressure pressure at the top of the mould, Pa
     * @param mould mould that is filled
     */
    public double pressScaleDraw(double dampMass, double topPressure, MouldDimensions mould) {
        if (!(dampMass > 0 && topPressure > 0) || solidFractionOf(dampMass, mould) >= packing.cap()) {
            return Double.NaN;
        }
        double mean = topPressure * meanOverTop(mould);
        double scale = mean / squeeze(dampMass, mean, mould);
        return scale > 0 && scale < Double.POSITIVE_INFINITY ? scale : Double.NaN;
    }

    /** P/Pk of a damp mass, kg, at a mean pressure, Pa; 0 or less where it is as loose as poured, infinite where no pressure does. */
    private double squeeze(double dampMass, double mean, MouldDimensions mould) {
        return model.squeezeOf(damp.powders(), packing.modelFraction(solidFractionOf(dampMass, mould), mean));
    }

    /**
     * {@return the pressure averaged over the mould over the pressure at the top, 0 to 1}
     *
     * @param mould mould that is filled
     */
    public double meanOverTop(MouldDimensions mould) {
        return Janssen1895.meanOverTop(Janssen1895.exponent(
                damp.parameters().wallFriction(), damp.parameters().lateralRatio(), mould.depthOverWidth()));
    }

    /**
     * {@return phi under a mean pressure, after bulking, spring-back and cap; no {@link Pressed} is built}
     *
     * @param meanPressure pressure averaged over the mould, Pa
     */
    public double solidFraction(double meanPressure) {
        return Math.min(packing.cap(), packing.solidFraction(meanPressure));
    }

    /**
     * {@return the density of the damp mix at a solid fraction, kg/m3}
     *
     * @param solidFraction volume of solids over the volume of the piece, 0 to 1
     */
    public double dampDensity(double solidFraction) {
        return damp.density(solidFraction);
    }

    /** {@return the density of the dry mix poured loosely, kg/m3} */
    public double looseDensity() {
        return damp.powders().trueDensity()
                * model.atIndex(damp.powders(), damp.powders().looseIndex());
    }

    /**
     * {@return the density of the dry mix tapped down, kg/m3: the compaction index of tapping is 9, as for the powders
     * (docs/physics/packing.md, 2)}
     */
    public double tappedDensity() {
        return damp.powders().trueDensity() * model.atIndex(damp.powders(), Powders.TAPPED_INDEX);
    }

    /** {@return the blend, with the recipe's own amount of liquid} */
    public Blend blend() {
        return damp.blend();
    }

    /** phi of a damp mass that fills the mould; refuses no mass. */
    private double solidFractionOf(double dampMass, MouldDimensions mould) {
        if (!(dampMass > 0 && Double.isFinite(dampMass))) {
            throw new Refusal(
                    "out-of-range", "fill", grams(dampMass), "more than 0 g", "Weigh what goes into one mould.");
        }
        return dampMass
                / (mould.volume()
                        * damp.powders().trueDensity()
                        * (1 + damp.liquid().ratio()));
    }

    /** Damp mass of the mould at phi, kg. */
    private double dampMassOf(double solidFraction, MouldDimensions mould) {
        return dampDensity(solidFraction) * mould.volume();
    }

    /** Gathers all that follows from phi: saturation, strength, feel, mass. */
    private Pressed result(
            double top, double mean, double phi, MouldDimensions mould, List<Notice> notices, double modelSpread) {
        double saturation = packing.saturation(phi);
        double strength = damp.strength(phi, saturation);
        Pressed.Feel feel = damp.feel(mean, phi, saturation, strength, mould, notices);
        return new Pressed(
                top,
                mean,
                phi,
                damp.powders().trueDensity(),
                damp.liquid().ratio(),
                saturation,
                DampFeel.air(phi, saturation),
                dampMassOf(phi, mould),
                top * mould.area(),
                strength,
                damp.selfWeight(phi, mould),
                modelSpread,
                feel,
                List.copyOf(notices));
    }

    /** For messages: a mass in grams to a tenth. */
    private static String grams(double kilograms) {
        double grams = Math.round(kilograms * 1e4) / 10.0;
        return Decimals.text(grams, 12) + " g";
    }
}
