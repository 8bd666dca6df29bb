package org.fizzhull.decide.compare;

import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Mould;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Workers;

/**
 * Moulds, recipes or both side by side, ranked.
 *
 * <p>All rows are answered in the same states of the world, so that one row against another is known better than either
 * alone. The rule of choice: a row is <b>best</b> where it is ahead of every other by more than the smallest difference
 * that matters in practice, and by more than the draws can err: for floating 2 pieces of 100 and two standard errors of
 * the difference, for fizzing and drying a tenth of the time, for cost a hundredth of it (the indifference zone of
 * Bechhofer 1954; its widths are assumed). Otherwise it is too close to call, and {@link #level} lists the rows that
 * are level with the first. Sorted by anything but floating, only rows that are likely to float (chance 0.66 or more)
 * can be best.
 *
 * <pre>{@code
 * List<Candidate> candidates = moulds.stream().map(mould -> new Candidate(mould, question(mould))).toList();
 * Comparison table = Comparison.of(candidates, NamedBath.homes(), SortBy.FLOAT);
 * Optional<ComparedPiece> take = table.best(); // empty: too close to call
 * }</pre>
 *
 * <p>Cost: one joint forecast for each candidate and bath. Immutable.
 */
public sealed interface Comparison permits ComparisonRecord {
    /** Difference of two chances below which two rows count as equal: 2 pieces of 100 (assumed). */
    double SAME_SHARE = 0.02;

    /** Difference of two times that counts as none, as a share of the first (assumed). */
    double SAME_TIME = 0.1;

    /** Difference of two costs that counts as none, as a share of the first (assumed). */
    double SAME_COST = 0.01;

    /** Least chance to float of a row that can be best of a table sorted by something else: the lower end of "likely". */
    double LIKELY = 0.66;

    /**
     * {@return a comparison by the standard priors and draws, on the calling thread} A {@link Comparer} takes others, tells its
     * progress and can be stopped.
     *
     * @param candidates one or more, at most 2,000
     * @param panel baths that each goes into, the worst of them counting; none for the bath of its question
     * @param sort what matters; must be known of one candidate at least
     * @throws org.fizzhull.quantity.Refusal as {@link Comparer#compare}
     */
    static Comparison of(List<Candidate> candidates, List<NamedBath> panel, SortBy sort) {
        return Comparer.standard().compare(candidates, panel, sort, Workers.Progress.SILENT);
    }

    /** {@return the rows, best first by what they are sorted by, equals in the order given} */
    List<ComparedPiece> rows();

    /**
     * {@return the rows among which it is too close to call; one row where that is the best, none where the table is sorted by
     * something else than floating and no row is likely to float, or none of those ever dries}
     */
    List<ComparedPiece> level();

    /** {@return what matters} */
    SortBy sort();

    /** {@return seed and number of draws} */
    Sampling sampling();

    /** {@return what the reader must know of all rows} */
    List<Notice> notices();

    /** {@return the row to take; empty where it is too close to call, or none is likely to float} */
    default Optional<ComparedPiece> best() {
        return level().size() == 1 ? Optional.of(level().get(0)) : Optional.empty();
    }

    /** {@return what the choice came to} */
    default Verdict verdict() {
        if (rows().size() == 1) {
            return Verdict.ONE_ROW;
        }
        if (level().isEmpty()) {
            boolean likely = rows().stream().anyMatch(row -> row.floats() >= LIKELY);
            return likely ? Verdict.NONE_DRIES : Verdict.NONE_FLOATS;
        }
        return level().size() == 1 ? Verdict.BEST : Verdict.TOO_CLOSE;
    }

    /** What a choice comes to. */
    enum Verdict {
        /** There is nothing to choose between. */
        ONE_ROW,
        /** One row is ahead of all others. */
        BEST,
        /** Several rows are level. */
        TOO_CLOSE,
        /** No row is likely to float. */
        NONE_FLOATS,
        /** Sorted by drying: no row that is likely to float is dry within 60 days in half of the cases. */
        NONE_DRIES
    }

    /** What matters to the person who chooses, and so what a {@link Comparison} is sorted by. */
    enum SortBy {
        /** The chance to float to the end, the surest first. */
        FLOAT("float"),
        /** How long it fizzes, the longest first. */
        FIZZ("fizz"),
        /** When it is dry, the soonest first. */
        DRY("dry"),
        /** Cost of what goes into a piece, the cheapest first. */
        COST("cost");

        /** The word of the option and of the key {@code sort}. */
        private final String word;

        SortBy(String word) {
            this.word = word;
        }

        /** {@return the word of the option and of the key {@code sort}} */
        public String word() {
            return word;
        }
    }

    /**
     * One of several things to choose from: a mould and what is asked of the piece it makes. {@link Comparison#of} takes a list of
     * them.
     *
     * @param mould mould that makes it
     * @param question the piece, how it is made, and its bath
     */
    record Candidate(Mould mould, Question question) {
        /**
         * Refuses what is missing.
         *
         * @param mould mould that makes it
         * @param question the piece, how it is made, and its bath
         */
        public Candidate {
            Given.all("mould, question", mould, question);
        }

        /**
         * {@return a candidate whose mould has no name but the shape's}
         *
         * @param question the piece, how it is made, and its bath
         */
        public static Candidate of(Question question) {
            return new Candidate(Mould.of(question.shape()), question);
        }
    }

    /**
     * A bath of a panel: a piece that is sold goes into tubs that its maker never sees.
     *
     * @param kind name of the bath
     * @param bath the water
     */
    record NamedBath(Kind kind, Bath bath) {
        /**
         * Refuses what is missing.
         *
         * @param kind name of the bath
         * @param bath the water
         */
        public NamedBath {
            Given.all("kind, bath", kind, bath);
        }

        /** Names of the baths of {@link #homes}. */
        public enum Kind {
            /** Little water in a wide tub. */
            SHALLOW("shallow tub"),
            /** A tub filled to the brim. */
            DEEP("deep tub"),
            /** A bath for small children, or one that was left to stand. */
            COOL("cool bath"),
            /** As hot as people like it. */
            HOT("hot bath"),
            /** With bath salt stirred in. */
            SALTED("salted bath");

            /** Its name in results. */
            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** {@return the name in results} */
            public String words() {
                return words;
            }
        }

        /**
         * {@return the baths that buyers take at home (common practice, no source): 38 C and 15 cm in 70 L, 38 C and 45 cm in 200 L,
         * 32 C, 42 C, and 38 C with 500 g of salt; what is not named is that of a usual bath}
         */
        public static List<NamedBath> homes() {
            Bath usual = Bath.at(Units.celsius(38));
            return List.of(
                    new NamedBath(Kind.SHALLOW, usual.withDepth(0.15).withVolume(0.070)),
                    new NamedBath(Kind.DEEP, usual.withDepth(0.45).withVolume(0.200)),
                    new NamedBath(Kind.COOL, usual.withTemperature(Units.celsius(32))),
                    new NamedBath(Kind.HOT, usual.withTemperature(Units.celsius(42))),
                    new NamedBath(Kind.SALTED, usual.withSalt(0.5)));
        }
    }
}
