package org.fizzhull.drying;

import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.recipe.Additives;

/** Mixes, pieces and rooms the tests share: a 65 mm ball of ordinary porosity in a workshop at 20 C. */
public final class Mixes {
    static final double HOUR = 3600;
    static final double DAY = 86400;
    public static final Opening BALL = new Opening(Profiles.ball(0.0325), 1);

    private Mixes() {}

    /** Bicarbonate, acid and, as a share of the dry mix free of its own water, corn starch. */
    public static DryingInput starch(double water, double starch) {
        return DryingInput.plain(1100, 0.40, water, SorptionMixture.of(starch, 0.088, 20, 0.72), 4.6);
    }

    /** The same with acid that can bind water of its own, kg/kg. */
    static DryingInput binding(double water, double starch, double acid) {
        DryingInput of = starch(water, starch);
        return new DryingInput(
                of.rhoDry(),
                of.porosity(),
                of.airPorosity(),
                water,
                Alcohol.NONE,
                0,
                0,
                of.sorbents(),
                of.capacity(),
                false,
                1,
                new Hydrates(0, acid),
                Additives.NONE);
    }

    public static RoomAir room(double humidity) {
        return RoomAir.of(293.15, humidity);
    }

    public static DryingPhase open(double humidity, double days) {
        return DryingPhase.open(BALL, room(humidity), days * DAY);
    }

    /** The defaults with no reaction at all. */
    public static DryingParameters inert() {
        return DryingParameters.standard()
                .but()
                .filmActivity(0.72)
                .promptYield(0)
                .filmRate(0)
                .build();
    }
}
