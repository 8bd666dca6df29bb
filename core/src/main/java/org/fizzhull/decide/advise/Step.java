package org.fizzhull.decide.advise;

import java.util.Locale;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Unit;

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
