package org.fizzhull.validation.check;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.relation.IapwsSurfaceTension;
import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.medium.relation.LaliberteCooper2004;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.medium.relation.WagnerPruss2002;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Bath water. The live rows are held against the IAPWS industrial formulation of 1997 in an open-source library. */
public final class MediumChecks extends Bindings {
    private static final double ATMOSPHERE_PA = 101325;
    private static final double SODIUM_CHLORIDE_KG_PER_MOL = 0.058440;

    private final IF97 steamTables = new IF97(IF97.UnitSystem.SI);

    public MediumChecks() {
        super("medium");
        bind("density", in -> Kell1975.density(in.celsius("t_C")));
        bindLive(
                "density-if97",
                in -> Kell1975.density(in.celsius("t_C")),
                in -> outside(() -> steamTables.densityPT(ATMOSPHERE_PA, in.celsius("t_C"))));
        bind("brine", in -> salt(in).density(in.celsius("t_C"), in.number("mass_percent") / 100));
        bind("brine-volume", MediumChecks::specificVolume);
        bind("viscosity", in -> 1e6 * Patek2009Viscosity.viscosity(in.celsius("t_C")));
        bindLive(
                "viscosity-if97",
                in -> 1e6 * Patek2009Viscosity.viscosity(in.celsius("t_C")),
                in -> 1e6 * outside(() -> steamTables.dynamicViscosityPT(1e5, in.celsius("t_C"))));
        bind("tension", in -> 1e3 * IapwsSurfaceTension.surfaceTension(in.celsius("t_C")));
        bindLive(
                "tension-if97",
                in -> 1e3 * IapwsSurfaceTension.surfaceTension(in.celsius("t_C")),
                in -> 1e3 * outside(() -> steamTables.surfaceTensionT(in.celsius("t_C"))));
        bind("capillary-length", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            return 1e3 * Math.sqrt(bath.surfaceTension() / (bath.density() * 9.80665));
        });
        bind("vapour", in -> WagnerPruss2002.vapourPressure(in.celsius("t_C")));
        bindLive(
                "vapour-if97",
                in -> WagnerPruss2002.vapourPressure(in.celsius("t_C")),
                in -> outside(() -> steamTables.saturationPressureT(in.celsius("t_C"))));
    }

    private static LaliberteCooper2004 salt(Inputs in) {
        return switch (in.word("salt")) {
            case "NaCl" -> LaliberteCooper2004.SODIUM_CHLORIDE;
            case "MgSO4" -> LaliberteCooper2004.MAGNESIUM_SULFATE;
            case "NaHCO3" -> LaliberteCooper2004.SODIUM_BICARBONATE;
            default -> throw new IllegalArgumentException("unknown salt " + in.word("salt"));
        };
    }

    /** cm3/g, from a molality in mol per kg of water. */
    private static double specificVolume(Inputs in) {
        double saltPerWater = in.number("molality_mol_per_kg") * SODIUM_CHLORIDE_KG_PER_MOL;
        double fraction = saltPerWater / (1 + saltPerWater);
        return 1e3 / LaliberteCooper2004.SODIUM_CHLORIDE.density(in.celsius("t_C"), fraction);
    }

    private static double outside(SteamTable value) {
        try {
            return value.get();
        } catch (OutOfRangeException e) {
            throw new IllegalStateException(e);
        }
    }

    private interface SteamTable {
        double get() throws OutOfRangeException;
    }
}
