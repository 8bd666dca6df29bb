package org.fizzhull.cli.deciding;

import static org.fizzhull.cli.floating.FloatSentence.chance;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.cli.drying.Days;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.result.Probability;

/** The first sentences of a comparison: which one, why, and what the next one would cost. */
final class CompareSentence {
    /** Rows that are level and named; more are counted. */
    private static final int NAMED = 3;

    /** A difference of surface for its size, or of weight for its size, that is worth a reason. */
    private static final double MORE_SURFACE = 1.05;

    private static final double LIGHTER = 0.995;

    private final Comparison comparison;

    CompareSentence(Comparison comparison) {
        this.comparison = comparison;
    }

    String text() {
        return fizzless() + answer();
    }

    /** What the sentence says of mixes that do not fizz, or hardly: nothing below need repeat it. */
    static Set<Notice> said(Comparison comparison) {
        Set<Notice> said = new LinkedHashSet<>();
        for (ComparedPiece row : comparison.rows()) {
            row.made().effervescence().flatMap(Effervescence::notice).ifPresent(said::add);
        }
        return said;
    }

    /** Said before all else: which of the mixes do not fizz, or hardly. */
    private String fizzless() {
        Set<String> said = new LinkedHashSet<>();
        for (ComparedPiece row : comparison.rows()) {
            Optional<Notice> first = row.made().effervescence().flatMap(Effervescence::notice);
            String mix = CompareWords.severalRecipes(comparison) ? CompareWords.recipe(row) + ": " : "";
            first.ifPresent(notice -> said.add(mix + notice.text() + ' '));
        }
        return String.join("", said);
    }

    private String answer() {
        ComparedPiece first = comparison.rows().get(0);
        return switch (comparison.verdict()) {
            case ONE_ROW -> "Only one to look at: the " + name(first) + floats(first) + '.';
            case BEST -> best(comparison.level().get(0));
            case TOO_CLOSE -> tooClose();
            case NONE_DRIES -> "None of these that is likely to float is dry within 60 days in this air.";
            case NONE_FLOATS -> {
                ComparedPiece surest = surest(comparison.rows());
                yield none(surest.floats()) + ": the surest, the " + name(surest) + ',' + floats(surest) + '.';
            }
        };
    }

    private String best(ComparedPiece best) {
        boolean poor = best.floats() < Comparison.LIKELY;
        String opening = poor
                ? none(best.floats()) + "; the surest is the " + name(best) + ", with a chance of "
                        + chance(best.floats())
                : "Take the " + name(best) + ": " + merit(best);
        Optional<ComparedPiece> next = next(best);
        if (next.isEmpty()) {
            return opening + worst(best) + ". None of the others can be relied on to float.";
        }
        return opening + worst(best) + reason(best, next.get()) + ". Next comes the " + name(next.get()) + ": "
                + behind(best, next.get()) + '.';
    }

    /**
     * Said where no row is likely to float (chance below 0.66): one that floats in 65 cases of 100 is not called unlikely, since the
     * word has its own bound ({@link Probability.Likelihood}, below 0.33).
     *
     * @param surest the highest chance of all rows to float to the end
     */
    static String none(double surest) {
        return Probability.Likelihood.of(surest).compareTo(Probability.Likelihood.UNLIKELY) >= 0
                ? "None of these is likely to float to the end"
                : "None of these can be relied on to float to the end";
    }

    /** What makes it best. */
    private String merit(ComparedPiece row) {
        return switch (comparison.sort()) {
            case FLOAT -> "the surest to float to the end, with a chance of " + chance(row.floats());
            case FIZZ -> "it fizzes longest of those likely to float, about " + fizz(row);
            case DRY -> "it is dry soonest of those likely to float, after " + ready(row);
            case COST -> "it is the cheapest of those likely to float, " + cost(row) + " each";
        };
    }

    /** What the next one has, and what it costs to take it. */
    private String behind(ComparedPiece best, ComparedPiece next) {
        return switch (comparison.sort()) {
            case FLOAT ->
                chance(next.floats()) + "; "
                        + worse(best.standing().betterThanNext().orElse(1))
                        + "to take it costs on average about "
                        + Math.max(
                                1,
                                Math.round(100
                                        * (next.standing().regret()
                                                - best.standing().regret())))
                        + " pieces of 100";
            case FIZZ -> "about " + fizz(next);
            case DRY -> ready(next);
            case COST -> cost(next);
        };
    }

    /** How often the next is the worse one; only where that is the rule, and never "all": the draws cannot know. */
    private static String worse(double share) {
        long count = Math.round(100 * share);
        if (count <= 50) {
            return "";
        }
        return "it is the worse one in " + (count >= 100 ? "nearly every case" : count + " of 100 cases") + ", and ";
    }

    private String tooClose() {
        List<ComparedPiece> level = comparison.level();
        String names = names(level);
        double low = level.stream().mapToDouble(ComparedPiece::floats).min().orElseThrow();
        double high = level.stream().mapToDouble(ComparedPiece::floats).max().orElseThrow();
        String band = chance(low).equals(chance(high)) ? chance(low) : chance(low) + " to " + chance(high);
        String where = comparison.rows().get(0).bathed().worst().isPresent() ? " in their worst bath" : "";
        String what = switch (comparison.sort()) {
            case FLOAT -> " float to the end about equally well, with a chance of " + band + where;
            case FIZZ -> " fizz about equally long";
            case DRY -> " are dry at about the same time";
            case COST -> " cost about the same";
        };
        boolean poor = comparison.sort() == Comparison.SortBy.FLOAT && high < Comparison.LIKELY;
        String opening = poor ? none(high) + ", and it is too close to call: " : "Too close to call: ";
        return opening + names + what + '.' + tieBreak(level);
    }

    /** A few by name, the rest by their number: {@code the dome, the ball and 4 more}. */
    private String names(List<ComparedPiece> level) {
        StringBuilder names = new StringBuilder();
        int named = Math.min(NAMED, level.size());
        for (int i = 0; i < named; i++) {
            boolean last = i + 1 == level.size();
            names.append(i == 0 ? "the " : last ? " and the " : ", the ").append(name(level.get(i)));
        }
        int more = level.size() - named;
        return more > 0 ? names + " and " + more + " more" : names.toString();
    }

    /** What else tells level rows apart. */
    private String tieBreak(List<ComparedPiece> level) {
        if (comparison.sort() != Comparison.SortBy.FLOAT) {
            ComparedPiece surest = surest(level);
            return " Of these the " + name(surest) + " is the surest to float to the end, with a chance of "
                    + chance(surest.floats()) + '.';
        }
        Optional<ComparedPiece> soonest = level.stream()
                .filter(row -> row.made().ready().isPresent())
                .min(Comparator.comparingDouble(
                        row -> row.made().ready().orElseThrow().median()));
        if (soonest.isPresent()) {
            return " Of these the " + name(soonest.get()) + " is dry soonest, after " + ready(soonest.get()) + '.';
        }
        Optional<ComparedPiece> longest = level.stream()
                .filter(row -> row.bathed().fizzTime().isPresent())
                .max(Comparator.comparingDouble(
                        row -> row.bathed().fizzTime().orElseThrow().median()));
        return longest.map(row -> " Of these the " + name(row) + " fizzes longest, about " + fizz(row) + '.')
                .orElse("");
    }

    /** Why one floats better than the other, where a plain reason is there. */
    private String reason(ComparedPiece best, ComparedPiece next) {
        if (comparison.sort() != Comparison.SortBy.FLOAT) {
            return "";
        }
        if (best.made().special().contains(MadePiece.Special.BOAT)
                && !next.made().special().contains(MadePiece.Special.BOAT)) {
            return ", for its hollow carries it like a boat while the rim is dry";
        }
        if (best.shape().insetMass() > 0 || next.shape().insetMass() > 0) {
            return "";
        }
        double lighter = weightForSize(best) / weightForSize(next);
        double surface = best.surfaceToVolume() / next.surfaceToVolume();
        if (lighter < LIGHTER) {
            return ", for it comes out " + NumberText.percent(1 - lighter) + " lighter for its size than the next";
        }
        return surface > MORE_SURFACE
                ? ", for it has " + NumberText.percent(surface - 1)
                        + " more surface for its size than the next, so more gas clings"
                : "";
    }

    private static double weightForSize(ComparedPiece row) {
        return row.made().mass().median() / row.shape().volume();
    }

    private Optional<ComparedPiece> next(ComparedPiece best) {
        List<ComparedPiece> rows = comparison.rows();
        return rows.stream()
                .skip(rows.indexOf(best) + 1L)
                .filter(row -> comparison.sort() == Comparison.SortBy.FLOAT || row.floats() >= Comparison.LIKELY)
                .findFirst();
    }

    static ComparedPiece surest(List<ComparedPiece> rows) {
        return rows.stream()
                .max(Comparator.comparingDouble(ComparedPiece::floats))
                .orElseThrow();
    }

    private String name(ComparedPiece row) {
        return CompareWords.name(comparison, row);
    }

    private static String floats(ComparedPiece row) {
        return " floats to the end with a chance of " + chance(row.floats()) + worst(row);
    }

    private static String worst(ComparedPiece row) {
        return row.bathed()
                .worst()
                .map(bath -> " in its worst bath, the " + bath.kind().words())
                .orElse("");
    }

    private static String fizz(ComparedPiece row) {
        return OutcomeText.duration(row.bathed().fizzTime().orElseThrow().median());
    }

    private static String ready(ComparedPiece row) {
        return Days.text(row.made().ready().orElseThrow().median());
    }

    static String cost(ComparedPiece row) {
        return NumberText.money(row.made().costEach().orElseThrow());
    }
}
