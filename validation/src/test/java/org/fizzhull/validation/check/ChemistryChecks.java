package org.fizzhull.validation.check;

import java.util.Locale;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.Acid;
import org.fizzhull.fizz.BathChemistry;
import org.fizzhull.fizz.BathWater;
import org.fizzhull.fizz.Davies1962;
import org.fizzhull.fizz.EdenBates1959;
import org.fizzhull.fizz.Goldberg2002;
import org.fizzhull.fizz.MalmbergMaryott1956;
import org.fizzhull.fizz.MarshallFranck1981;
import org.fizzhull.fizz.MolarMass;
import org.fizzhull.fizz.PlummerBusenberg1982;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.fizz.gas.Yield;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.validation.published.SoliByrne2002;
import org.fizzhull.validation.published.Weiss1974;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** What a mix can give, the constants of the bath and its pH. */
public final class ChemistryChecks extends Bindings {
    public ChemistryChecks() {
        super("chemistry");
        bind("yield", ChemistryChecks::reacted);
        bind("equivalent", ChemistryChecks::equivalent);
        bind("weiss", in -> Weiss1974.perLitre(in.celsius("t_C"), 0));
        bind("weiss-sea", in -> Math.log(Weiss1974.perKilogram(in.celsius("t_C"), in.number("S"))));
        bind("solubility", in -> Math.pow(10, PlummerBusenberg1982.lgSolubility(in.celsius("t_C"))));
        bind("lg-solubility", in -> PlummerBusenberg1982.lgSolubility(in.celsius("t_C")));
        bind("carbonic", in -> -carbonic((int) in.number("step"), in.celsius("t_C")));
        bind("pKw", in -> -MarshallFranck1981.lgIonProduct(in.celsius("t_C"), Kell1975.density(in.celsius("t_C"))));
        bind("citric", in -> Goldberg2002.CITRIC.pK((int) in.number("step"), in.celsius("t_C")));
        bind("tartaric", in -> Goldberg2002.TARTARIC.pK((int) in.number("step"), in.celsius("t_C")));
        bind("malic", in -> EdenBates1959.MALIC.pK((int) in.number("step"), in.celsius("t_C")));
        bind("permittivity", in -> MalmbergMaryott1956.permittivity(in.celsius("t_C")));
        bind("slope", in -> Davies1962.slope(in.celsius("t_C"), Kell1975.density(in.celsius("t_C"))));
        bind("hydration", in -> SoliByrne2002.hydration(in.celsius("t_C")));
        bind("dehydration", in -> SoliByrne2002.dehydration(in.celsius("t_C")));
        bind("bath", ChemistryChecks::bath);
        bind("tablet", in -> chemistry(in).closed().ph());
        bind(
                "pure-water",
                in -> BathChemistry.of(Bath.at(in.celsius("t_C")), Reagents.none())
                        .open(in.number("p_atm") * PhysicalConstants.ATMOSPHERE)
                        .ph());
        bind("sour-water", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            double water = BathChemistry.of(bath, Reagents.none()).closed().waterMass();
            Reagents sour = Reagents.none().withAcid(acid(in), in.number("molality") * water);
            return BathChemistry.of(bath, sour).closed().ph();
        });
    }

    private static double carbonic(int step, double kelvin) {
        return step == 1 ? PlummerBusenberg1982.lgFirst(kelvin) : PlummerBusenberg1982.lgSecond(kelvin);
    }

    private static double reacted(Inputs in) {
        Yield yield = mix(in).theoreticalYield();
        return switch (in.word("of")) {
            case "gas_mol" -> yield.carbonDioxide();
            case "gas_g" -> 1e3 * yield.gasMass();
            case "bicarbonate_left_g" -> 1e3 * yield.bicarbonateLeft() * MolarMass.SODIUM_BICARBONATE;
            case "water_g" -> 1e3 * yield.waterMade() * MolarMass.WATER;
            case "gas_L" -> 1e3 * yield.dryVolume(in.celsius("t_C"));
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    /** Of the mix in which bicarbonate and acid meet exactly. */
    private static double equivalent(Inputs in) {
        Acid acid = acid(in);
        double bicarbonatePerAcid = acid.groups() * MolarMass.SODIUM_BICARBONATE / acid.molarMass();
        Reagents gram = Reagents.none()
                .withAcid(acid, 1e-3 / acid.molarMass())
                .withBicarbonate(1e-3 * bicarbonatePerAcid / MolarMass.SODIUM_BICARBONATE);
        double gas = gram.theoreticalYield().carbonDioxide();
        return switch (in.word("of")) {
            case "g_bicarbonate_per_g" -> bicarbonatePerAcid;
            case "g_carbonate_per_g" -> acid.groups() / 2.0 * MolarMass.SODIUM_CARBONATE / acid.molarMass();
            case "g_gas_per_g" -> 1e3 * gas * MolarMass.CARBON_DIOXIDE;
            case "mol_per_100g" -> 100 * gas / (1 + bicarbonatePerAcid);
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    private static double bath(Inputs in) {
        BathChemistry chemistry = chemistry(in);
        BathWater closed = chemistry.closed();
        return switch (in.word("of")) {
            case "pH" -> closed.ph();
            case "open_pH" -> chemistry.open().ph();
            case "I" -> closed.ionicStrength();
            case "gas_mmol_per_kg" -> 1e3 * closed.dissolvedGas();
            case "gas_atm" -> closed.gasPressure() / PhysicalConstants.ATMOSPHERE;
            case "degassed_pH" -> chemistry.degassed(in.number("share")).ph();
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    private static BathChemistry chemistry(Inputs in) {
        Bath bath = Bath.at(in.celsius("t_C")).withVolume(in.number("L") / 1e3);
        return BathChemistry.of(bath, mix(in));
    }

    private static Reagents mix(Inputs in) {
        Acid acid = acid(in);
        Reagents mix = Reagents.none()
                .withBicarbonate(in.number("bicarbonate_g") / 1e3 / MolarMass.SODIUM_BICARBONATE)
                .withAcid(acid, in.number("acid_g") / 1e3 / acid.molarMass());
        return in.has("tartaric_g")
                ? mix.withAcid(Acid.TARTARIC, in.number("tartaric_g") / 1e3 / MolarMass.TARTARIC_ACID)
                : mix;
    }

    private static Acid acid(Inputs in) {
        return Acid.valueOf(in.word("acid").toUpperCase(Locale.ROOT));
    }
}
