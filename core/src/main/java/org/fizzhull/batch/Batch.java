package org.fizzhull.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Price;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.change.LimitedShare;

/**
 * N pieces of a recipe as mixes that a person can make: equal mixes, none above 2 kg, each small enough to be pressed
 * within the working time.
 *
 * <pre>
 * wanted = n + spares,   fits = min(mix size/m, working time/30 s),   mixes = ceil(wanted/fits)
 * </pre>
 *
 * <p>m damp mass of a piece with 2 % for what sticks to the bowl. Mixes are equal (common practice, no source), so that the
 * last one may make more than is asked for; those count as spare. Masses in kg. Prices and limits are the user's own. Left
 * out: whether the pieces hold, dry and float. Immutable.
 *
 * @param mixes number of mixes, 1 or more
 * @param piecesPerMix pieces that each mix makes
 * @param sparePieces pieces beyond those asked for
 * @param mixMass damp mass of one mix with what sticks to the bowl, kg
 * @param lines ingredients of one mix, powders first
 * @param costEach cost of all priced ingredients per piece asked for, own money; empty where no ingredient has a price
 * @param notices what the reader must know
 */
public record Batch(
        int mixes,
        int piecesPerMix,
        int sparePieces,
        double mixMass,
        List<Line> lines,
        OptionalDouble costEach,
        List<Notice> notices) {
    /** No mix above this: arms, bowls and dust set the end (common practice, no source), kg. */
    public static final double LARGEST_MIX = 2.0;

    /** One spare in 25, one at least (common practice, no source): knocked, dropped or stuck in the mould. */
    public static final double SPARE_SHARE = 0.04;

    /** Largest share of crumbling pieces that spares are planned for. */
    private static final double MOST_CRUMBLING = 0.5;

    /** Share of a piece's mass that sticks to bowl, hands and mould (assumed). */
    public static final double LOST_SHARE = 0.02;

    /** Pressing one piece and taking it out of the mould, s (assumed). */
    public static final double SECONDS_A_PIECE = 30;

    /**
     * One ingredient of the plan.
     *
     * @param ingredient which ingredient
     * @param mass in one mix, kg
     * @param volume in one mix, powders loosely filled, m3
     * @param spoons the volume in cups and spoons
     * @param cost of all mixes, own money; empty without a price
     * @param packs packs to buy for all mixes; 0 without a price
     */
    public record Line(
            Ingredient ingredient, double mass, double volume, String spoons, OptionalDouble cost, int packs) {}

    /**
     * Copies the lists; {@link #plan} makes the numbers.
     *
     * @param mixes number of mixes
     * @param piecesPerMix pieces that each mix makes
     * @param sparePieces pieces beyond those asked for
     * @param mixMass damp mass of one mix with what sticks to the bowl, kg
     * @param lines ingredients of one mix
     * @param costEach cost per piece asked for, own money; empty where no ingredient has a price
     * @param notices what the reader must know
     */
    public Batch {
        lines = List.copyOf(lines);
        notices = List.copyOf(notices);
    }

    /**
     * Plans a batch: equal mixes, each small enough for the bowl, the scale and the working time.
     *
     * @param recipe the mix in proportion; its own amounts do not matter
     * @param pieceMass damp mass of one piece, kg
     * @param pieces number of pieces wanted, 1 to 100,000
     * @param workingTime time until 2 % of the fizz is gone, s ({@code EarlyReaction.workingTime}); 0 where that is at once:
     *     it then bounds no mix, since a smaller one would lose as much
     * @param mixSize largest mix wanted, kg, from one piece up to 2 kg
     * @param crumbling share of the pieces that is expected to crumble, 0 to 1; it raises the spares above {@link
     *     #SPARE_SHARE}, and no share above a half is planned for: such a mix is mended, not made twice
     * @param measures cups and spoons in which the lines are also given
     * @return the plan
     * @throws Refusal {@code out-of-range} for the number of pieces, a piece above 2 kg or a mix size that holds none
     */
    public static Batch plan(
            Recipe recipe,
            double pieceMass,
            int pieces,
            double workingTime,
            double mixSize,
            double crumbling,
            Measures measures) {
        Given.all("recipe, measures", recipe, measures);
        if (!(pieces >= 1 && pieces <= 100_000)) {
            throw new Refusal(
                    "out-of-range",
                    "pieces",
                    Integer.toString(pieces),
                    "1 to 100000",
                    "Plan a larger order in several batches.");
        }
        if (!(workingTime >= 0)) {
            throw new Refusal(
                    "out-of-range", "working time", workingTime + " s", "0 s or more", "Ask the press for it.");
        }
        if (!(crumbling >= 0 && crumbling <= 1)) {
            throw new Refusal("out-of-range", "crumbling", crumbling + "", "0 to 1", "It is a share of the pieces.");
        }
        // one piece with what sticks to the bowl must fit a mix, and the mix a bowl
        double withLoss = pieceMass * (1 + LOST_SHARE);
        if (!(withLoss > 0 && withLoss <= LARGEST_MIX)) {
            throw new Refusal(
                    "out-of-range",
                    "piece",
                    grams(pieceMass) + " for one piece",
                    "up to " + grams(LARGEST_MIX / (1 + LOST_SHARE)),
                    "A mix above " + grams(LARGEST_MIX)
                            + " is no work for one bowl and two arms: take a smaller mould.");
        }
        if (!(mixSize <= LARGEST_MIX && mixSize >= withLoss)) {
            throw new Refusal(
                    "out-of-range",
                    "mix size",
                    grams(mixSize),
                    "at least one piece (" + grams(withLoss) + ") and up to " + grams(LARGEST_MIX),
                    mixSize > LARGEST_MIX
                            ? "Larger mixes dry and fizz off before they are pressed; make more of them."
                            : "One mix must make at least one piece, with what sticks to the bowl.");
        }
        List<Notice> notices = new ArrayList<>();
        // pieces that one mix can make, by its size and by the time there is to press them
        int fits = (int) Math.floor(mixSize / withLoss + 1e-9);
        if (workingTime > 0) {
            fits = (int) Math.max(1, Math.min(fits, Math.floor(workingTime / SECONDS_A_PIECE)));
        }
        if (!(workingTime > 0)) {
            notices.add(new Notice(
                    "press-at-once",
                    "So much water takes 2 % of the fizz as it goes in: press without a pause; a smaller mix is done"
                            + " sooner."));
        } else if (workingTime < SECONDS_A_PIECE) {
            notices.add(new Notice(
                    "press-at-once",
                    "So much water takes 2 % of the fizz within " + Math.max(1, Math.round(workingTime))
                            + " s, sooner than a piece is pressed (" + Math.round(SECONDS_A_PIECE)
                            + " s): each mix makes one piece only. Less water gives more time."));
        }
        // mixes are made equal by rounding the pieces of each up
        int wanted = pieces + spares(pieces, crumbling);
        int mixes = (wanted + fits - 1) / fits;
        int perMix = (wanted + mixes - 1) / mixes;
        double mixMass = perMix * withLoss;
        return lines(recipe, mixes, perMix, mixes * perMix - pieces, mixMass, pieces, measures, notices);
    }

    /**
     * Number of spares, so that the pieces asked for are left when that share has crumbled: n c/(1 - c), at least 4 %, at
     * least one.
     */
    static int spares(int pieces, double crumbling) {
        double usual = Math.round(pieces * SPARE_SHARE);
        double share = Math.min(MOST_CRUMBLING, crumbling);
        return (int) Math.max(1, Math.max(usual, Math.ceil(pieces * share / (1 - share) - 1e-9)));
    }

    /**
     * The plan with its ingredients: masses, spoons, cost and packs. Ingredients without mass are left out; water needs no
     * price.
     */
    private static Batch lines(
            Recipe recipe,
            int mixes,
            int perMix,
            int spare,
            double mixMass,
            int pieces,
            Measures measures,
            List<Notice> notices) {
        Spoons spoons = new Spoons(measures);
        double scale = mixMass / recipe.mass();
        List<Line> lines = new ArrayList<>();
        double cost = 0;
        List<String> unpriced = new ArrayList<>();
        for (Recipe.Part part : recipe.parts()) {
            if (part.mass() == 0) {
                continue;
            }
            Ingredient ingredient = part.ingredient();
            double mass = part.mass() * scale;
            double volume = mass / ingredient.scoopDensity().value();
            // cost and packs are of all mixes
            Price price = recipe.prices().get(ingredient.name());
            if (price == null) {
                if (ingredient.value(Property.WATER_SHARE, 0) < 1) {
                    unpriced.add(ingredient.name());
                }
                lines.add(new Line(ingredient, mass, volume, spoons.text(volume), OptionalDouble.empty(), 0));
            } else {
                double paid = mass * mixes * price.perKilogram();
                cost += paid;
                lines.add(new Line(
                        ingredient,
                        mass,
                        volume,
                        spoons.text(volume),
                        OptionalDouble.of(paid),
                        price.packs(mass * mixes)));
            }
        }
        overLimits(recipe, notices);
        boolean priced = !recipe.prices().isEmpty();
        if (priced && !unpriced.isEmpty()) {
            notices.add(new Notice("no-price", "The cost leaves out " + String.join(", ", unpriced) + "."));
        }
        OptionalDouble each = priced ? OptionalDouble.of(cost / pieces) : OptionalDouble.empty();
        return new Batch(mixes, perMix, spare, mixMass, lines, each, notices);
    }

    /** Tells what exceeds, as a share of the dried piece, the largest share that the user entered from the supplier's sheet. */
    private static void overLimits(Recipe recipe, List<Notice> notices) {
        for (LimitedShare limited : LimitedShare.of(recipe)) {
            if (!limited.kept()) {
                notices.add(new Notice(
                        "above-limit",
                        limited.part().ingredient().name() + " is " + percent(limited.share())
                                + " % of the dried piece, above the " + percent(limited.limit())
                                + " % that you entered as your supplier's limit."));
            }
        }
    }

    /** A share in hundredths of a per cent. */
    private static double percent(double share) {
        return Math.round(share * 1e4) / 100.0;
    }

    /** {@return the damp mass of all mixes together, kg} */
    public double totalMass() {
        return mixes * mixMass;
    }

    /** {@return the number of pieces, spares included} */
    public int allPieces() {
        return mixes * piecesPerMix;
    }

    /** For messages: a mass in grams to a tenth. */
    private static String grams(double kilograms) {
        return Decimals.text(Math.round(kilograms * 1e4) / 10.0, 12) + " g";
    }
}
