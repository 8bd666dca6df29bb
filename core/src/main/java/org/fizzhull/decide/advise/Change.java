package org.fizzhull.decide.advise;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Unit;

/**
 * A proposal: one step or two, and what comes of them. Immutable.
 *
 * @param steps what is done, one or two, in order
 * @param design the changed design
 * @param effort how much of a nuisance it is, on the scale of {@link Adjustment#effort}; only the order counts
 * @param appraisal how the changed design does, asked anew with all draws
 * @param reachesGoal whether its chance is that of the goal or more
 * @param caution the gravest thing to mind; empty for nothing beyond the usual
 */
public record Change(
        List<Step> steps,
        Design design,
        double effort,
        Advice.Appraisal appraisal,
        boolean reachesGoal,
        Optional<Caution> caution) {
    /**
     * Copies the list.
     *
     * @param steps what is done, one or two, in order
     * @param design the changed design
     * @param effort how much of a nuisance it is; only the order counts
     * @param appraisal how the changed design does, asked anew with all draws
     * @param reachesGoal whether its chance is that of the goal or more
     * @param caution the gravest thing to mind; empty for nothing beyond the usual
     */
    public Change {
        steps = List.copyOf(steps);
    }

    /** What to mind with a change. */
    public enum Caution {
        /** Foaming powder: its dust irritates, and it makes the bath slippery. */
        FOAMING_POWDER("Its dust irritates: wear a mask; the bath becomes slippery"),
        /** Acid: its dust irritates eyes and airways. */
        ACID_DUST("Its dust irritates eyes and airways: wear a mask and goggles"),
        /** It may crumble with less liquid or a lighter press. */
        MAY_CRUMBLE("It may crumble: press one and look"),
        /** The label names what is in it: a changed mix needs a changed label, and local rules may ask for more. */
        LABEL("The label changes with the mix");

        /** The caution for people, without its full stop. */
        private final String words;

        Caution(String words) {
            this.words = words;
        }

        /** {@return the caution for people, without its full stop} */
        public String words() {
            return words;
        }
    }

    /**
     * One thing done differently, in a step that a kitchen can take: grams, days, five per cent of humidity, five millimetres. Two
     * of them make the largest {@link Change}.
     *
     * @param kind what is done
     * @param subject ingredient that it is done to; empty where there is none
     * @param replacement ingredient that makes up for it, gram for gram; empty where none does
     * @param from setting as it is
     * @param to setting after the step
     */
    public record Step(Kind kind, String subject, String replacement, Setting from, Setting to) {
        /** A step in which nothing makes up for another. */
        Step(Kind kind, String subject, Setting from, Setting to) {
            this(kind, subject, "", from, to);
        }

        /** What can be done differently. */
        public enum Kind {
            /** The weight of damp mix, or of the finished piece, by grams. */
            WEIGHT,
            /** How hard it is pressed, by words. */
            PRESS,
            /** A liquid, by grams. */
            LIQUID,
            /** A powder, by five grams. */
            POWDER,
            /** A powder for another, by five grams. */
            SWAP,
            /** Time of drying, by days. */
            DRYING_TIME,
            /** Humidity of the drying room, by five per cent. */
            ROOM_HUMIDITY,
            /** A mould of the same kind, by five millimetres. */
            MOULD_SIZE,
            /** A mould of another kind. */
            MOULD_KIND,
            /** How it goes into the bath. */
            INTO_BATH
        }

        /** {@return what is done to what, as a stable word: {@code powder: corn starch}, {@code swap: kaolin -> corn starch}} */
        public String label() {
            String done = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            String both = replacement.isEmpty() ? subject : subject + " -> " + replacement;
            return both.isEmpty() ? done : done + ": " + both;
        }

        /** What something is set to. */
        public sealed interface Setting {
            /** {@return the setting as it is typed: {@code 141 g}, {@code light}} */
            String text();

            /**
             * An amount.
             *
             * @param si value, SI; humidity as a fraction
             * @param unit unit in which a maker reads it
             */
            record Amount(double si, Unit unit) implements Setting {
                /** {@return the value in its unit} */
                public double inUnit() {
                    return unit.fromSi(si);
                }

                /** {@return the value in its unit, to a hundredth} */
                public String number() {
                    return Decimals.text(Math.rint(inUnit() * 100) / 100, 6);
                }

                @Override
                public String text() {
                    return number() + ' ' + unit.symbol();
                }
            }

            /**
             * A word: how hard, which mould, how it goes into the bath.
             *
             * @param text as it is typed
             */
            record Word(String text) implements Setting {}
        }
    }
}
