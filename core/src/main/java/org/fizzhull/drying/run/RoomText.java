package org.fizzhull.drying.run;

import java.util.List;
import java.util.Locale;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.BareNumber;

/**
 * A closed room as people write it: {@code 25 m3}, {@code 25 m3, 0.5 changes/h}, {@code 25 m3, 0.5 changes/h,
 * dehumidifier 300 g/d}. Without a figure the air changes half the room an hour [assumed]; a dehumidifier is set to 50
 * %.
 *
 * <p>The volume stands first, the other parts in any order, each at most once. Rates are per hour or per day; a
 * dehumidifier is told in mass or volume of water. Stateless.
 */
public final class RoomText {
    /** Air changes where none are given, 1/s [assumed: a closed room with ordinary windows]. */
    public static final double DEFAULT_CHANGES = 0.5 / 3600;

    /** Set point of a dehumidifier, relative humidity [assumed]. */
    public static final double SET_POINT = 0.50;

    /** What is allowed, in words. */
    private static final String FORM =
            "a volume, then air changes and a dehumidifier, such as 25 m3, 0.5 changes/h," + " dehumidifier 300 g/d";
    /** Volumes of a room. */
    private static final Allowed VOLUME = Allowed.between(0.1, 100000, Unit.CUBIC_METRE);
    /** Water a dehumidifier takes, in the time that is told. */
    private static final Allowed TAKEN = Allowed.between(0, 100000, Unit.GRAM);
    /** What stands between the number of air changes and its time. */
    private static final String CHANGES = "changes/";
    /** What stands before the water a dehumidifier takes. */
    private static final String DRYER = "dehumidifier ";

    private RoomText() {}

    /**
     * Reads a closed room that holds {@code pieces} pieces.
     *
     * @param field option or key that was read, for the refusal
     * @param text what the person wrote
     * @param pieces number of pieces that dry in it, 1 or more
     * @return the room
     * @throws Refusal {@code unreadable-room}, or with a code of the package quantity
     */
    public static DryingPhase.ClosedRoom parse(String field, String text, int pieces) {
        if (pieces < 1) {
            throw new Refusal(
                    "out-of-range",
                    "pieces",
                    Integer.toString(pieces),
                    "1 or more",
                    "Count the pieces that dry in the room.");
        }
        List<String> parts = QuantityText.parts(text);
        double volume = volume(field, parts.get(0));
        double changes = Double.NaN;
        double dryer = Double.NaN;
        for (int i = 1; i < parts.size(); i++) {
            String part = parts.get(i).toLowerCase(Locale.ROOT);
            if (part.startsWith(DRYER) && Double.isNaN(dryer)) {
                dryer = rate(field, text, part.substring(DRYER.length()).strip());
            } else if (part.contains(CHANGES) && Double.isNaN(changes)) {
                changes = changes(field, text, part);
            } else {
                throw refusal(field, text);
            }
        }
        return new DryingPhase.ClosedRoom(
                volume,
                Double.isNaN(changes) ? DEFAULT_CHANGES : changes,
                Double.isNaN(dryer) ? 0 : dryer,
                SET_POINT,
                pieces);
    }

    /** The volume, m3; three sides are refused with the volume that they make. */
    private static double volume(String field, String text) {
        String[] sides = text.split("[x×*]", -1);
        if (sides.length != 3) {
            return VOLUME.parseExact(field, text);
        }
        String hint = "Multiply length, width and height.";
        try {
            // the unit may stand behind the last side alone: 8 x 8 x 8 ft
            Unit unit = Unit.METRE;
            double product = 1;
            for (int i = 2; i >= 0; i--) {
                boolean alone = BareNumber.of(sides[i].strip()).isPresent();
                if (i == 2 && sides[i].strip().endsWith(Unit.FOOT.symbol())) {
                    unit = Unit.FOOT;
                }
                String side = alone ? sides[i] + unit.symbol() : sides[i];
                product *= QuantityText.parseExact(field, side, Dimension.LENGTH);
            }
            Unit cubed = unit == Unit.FOOT ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
            VOLUME.check(field, product);
            hint = "Multiply length, width and height: " + QuantityText.rounded(product, cubed, 4) + ".";
        } catch (Refusal noRoom) {
            // sides that make no room: the hint names none
        }
        throw new Refusal("unreadable-room", field, text, FORM, hint);
    }

    /** Air changes, 1/s, of a part such as {@code 0.5 changes/h}. */
    private static double changes(String field, String text, String part) {
        int at = part.indexOf(CHANGES);
        double number = BareNumber.of(part.substring(0, at).strip()).orElseThrow(() -> refusal(field, text));
        double perSecond = number / per(field, text, part.substring(at + CHANGES.length()));
        if (!(perSecond >= 0 && perSecond <= 100.0 / 3600)) {
            throw new Refusal(
                    "out-of-range", field, part, "0 to 100 changes/h", "Leave it out where you do not know it.");
        }
        return perSecond;
    }

    /** Water taken, kg/s, of a part such as {@code 300 g/d}; a volume counts as water. */
    private static double rate(String field, String text, String part) {
        int slash = part.indexOf('/');
        if (slash < 0) {
            throw refusal(field, text);
        }
        String amount = part.substring(0, slash).strip();
        double mass = QuantityText.parseAny(field, amount, Measures.US_LEGAL, Dimension.MASS, Dimension.VOLUME)
                                .dimension()
                        == Dimension.VOLUME
                ? 1000 * QuantityText.parseExact(field, amount, Dimension.VOLUME)
                : QuantityText.parseExact(field, amount, Dimension.MASS);
        return TAKEN.check(field, mass) / per(field, text, part.substring(slash + 1));
    }

    /** Seconds in an hour or a day. */
    private static double per(String field, String text, String unit) {
        return switch (unit.strip()) {
            case "h", "hour" -> 3600;
            case "d", "day" -> 86400;
            default -> throw refusal(field, text);
        };
    }

    /** What is told of a text that is no room. */
    private static Refusal refusal(String field, String text) {
        return new Refusal(
                "unreadable-room", field, text, FORM, "Start with the size of the room, commas between the parts.");
    }
}
