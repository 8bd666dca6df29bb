package org.fizzhull.fizz.gas;

import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;

/**
 * Whether a piece fizzes at all, and what keeps it from doing so. The one place that decides it, for every command.
 *
 * <p>What counts is n, the carbon dioxide a piece can still give, mol per kg of piece:
 *
 * <ul>
 *   <li>n at most 0.02 mol/kg ({@link #LEAST_CAPACITY}): it does not fizz. No bubble layer forms; the powders
 *       dissolve.
 *   <li>n below 0.46 mol/kg, a tenth of what a usual mix gives: it hardly fizzes. Where between "fizzes" and "does not"
 *       a maker stops calling it a fizzing piece is a judgement [assumed].
 *   <li>above: it fizzes.
 * </ul>
 *
 * <p>For such pieces times of fizzing and what runs out first have no meaning. Immutable.
 *
 * @param degree how much of a fizz there is
 * @param cause what keeps it from fizzing; {@link Cause#NONE} where it fizzes
 */
public record Effervescence(Degree degree, Cause cause) {
    /** Below this capacity, mol/kg, nothing clings. */
    public static final double LEAST_CAPACITY = 0.02;

    /** Gas below which a piece hardly fizzes, mol per kg of piece: a tenth of a usual mix's 4.6 [assumed]. */
    public static final double HARDLY = 0.46;

    /** How much of a fizz there is. */
    public enum Degree {
        /** As a fizzing piece does. */
        FIZZES,
        /** Less than a tenth of what a usual piece does. */
        HARDLY,
        /** Not at all. */
        NOT
    }

    /** What keeps a piece from fizzing. */
    public enum Cause {
        /** Nothing: it fizzes. */
        NONE("", ""),
        /** The mix holds no acid, or all of it is eaten by carbonate. */
        ACID("there is no acid in it that could set gas free", "there is next to no acid in it"),
        /** The mix holds no bicarbonate or carbonate. */
        BICARBONATE("there is no bicarbonate in it that could give gas", "there is next to no bicarbonate in it"),
        /** The mix would fizz, but nearly all has reacted before the bath. */
        SPENT("it has lost its fizz before the bath", "it has lost nearly all its fizz before the bath");

        /** Why it does not fizz, a clause. */
        private final String whole;
        /** Why it hardly fizzes, a clause. */
        private final String nearly;

        Cause(String whole, String nearly) {
            this.whole = whole;
            this.nearly = nearly;
        }
    }

    /**
     * {@return the effervescence of a piece from a known mix}
     *
     * @param fresh what can react in the powders as bought, mol per kg of dry powder
     * @param capacity carbon dioxide the piece can still give, mol per kg of piece, 0 or more
     * @throws IllegalArgumentException for a negative capacity or NaN
     */
    public static Effervescence of(Blend.Moles fresh, double capacity) {
        Given.all("fresh", fresh);
        Degree degree = degree(capacity);
        if (degree == Degree.FIZZES) {
            return new Effervescence(degree, Cause.NONE);
        }
        if (fresh.gas() >= HARDLY) {
            return new Effervescence(degree, Cause.SPENT);
        }
        boolean acid = fresh.acid() - fresh.carbonate() < fresh.bicarbonate() + fresh.carbonate();
        return new Effervescence(degree, acid ? Cause.ACID : Cause.BICARBONATE);
    }

    /**
     * {@return the effervescence of powders as bought, before any loss}
     *
     * @param fresh moles that can react, per kg of dry powder
     */
    public static Effervescence of(Blend.Moles fresh) {
        Given.all("fresh", fresh);
        return of(fresh, fresh.gas());
    }

    /** {@return whether it is a fizzing piece at all} */
    public boolean fizzes() {
        return degree == Degree.FIZZES;
    }

    /**
     * {@return what a maker must be told first; empty where it fizzes} Codes {@code no-fizz} and {@code hardly-fizzes}.
     */
    public Optional<Notice> notice() {
        return switch (degree) {
            case FIZZES -> Optional.empty();
            case HARDLY -> Optional.of(new Notice("hardly-fizzes", "It hardly fizzes: " + cause.nearly + '.'));
            case NOT -> Optional.of(new Notice("no-fizz", "It does not fizz: " + cause.whole + '.'));
        };
    }

    /** The degree by capacity alone, mol/kg. */
    private static Degree degree(double capacity) {
        if (!(capacity >= 0)) {
            throw new IllegalArgumentException("gas capacity " + capacity + " mol/kg is not 0 or more");
        }
        if (capacity <= LEAST_CAPACITY) {
            return Degree.NOT;
        }
        return capacity < HARDLY ? Degree.HARDLY : Degree.FIZZES;
    }
}
