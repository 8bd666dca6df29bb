package org.fizzhull.medium;

import org.fizzhull.quantity.Refusal;

/**
 * Room air as people write it: {@code 21 C, 55 %}, or, from the weather report, {@code outside 8 C, 85 %, heated to 21
 * C}. The second is turned into the air of the room by {@link RoomAir#heated}. Stateless.
 */
public final class RoomAirText {
    /** What is allowed, as messages word it. */
    private static final String FORM = "21 C, 55 %, or outside 8 C, 85 %, heated to 21 C";
    /** Word before the temperature outside. */
    private static final String OUTSIDE = "outside ";
    /** Words before the temperature of the room. */
    private static final String HEATED = "heated to ";

    private RoomAirText() {}

    /**
     * Reads room air.
     *
     * @param field option or key that was read, for the refusal
     * @param text what the person wrote
     * @return the room air, at one atmosphere
     * @throws Refusal {@code unreadable-air}, {@code below-dew-point}, or with a code of the package quantity
     */
    public static RoomAir parse(String field, String text) {
        String whole = text.strip();
        int first = whole.indexOf(',');
        int second = first < 0 ? -1 : whole.indexOf(',', first + 1);
        if (first < 0) {
            throw refusal(field, text, "Give a temperature and a relative humidity.");
        }
        String temperature = whole.substring(0, first).strip();
        if (!starts(temperature, OUTSIDE)) {
            if (second >= 0) {
                throw refusal(field, text, "A third part belongs to outside air only.");
            }
            return RoomAir.of(
                    RoomAir.TEMPERATURE.parseExact(field, temperature), humidity(field, whole.substring(first + 1)));
        }
        if (second < 0) {
            throw refusal(field, text, "Say to what temperature the outside air is heated.");
        }
        String inside = whole.substring(second + 1).strip();
        if (!starts(inside, HEATED)) {
            throw refusal(field, text, "Say to what temperature the outside air is heated.");
        }
        return RoomAir.heated(
                RoomAir.OUTSIDE.parseExact(
                        field, temperature.substring(OUTSIDE.length()).strip()),
                humidity(field, whole.substring(first + 1, second)),
                RoomAir.TEMPERATURE.parseExact(
                        field, inside.substring(HEATED.length()).strip()));
    }

    /** Relative humidity, 0 to 1, as it is written in percent. */
    private static double humidity(String field, String text) {
        return RoomAir.HUMIDITY.parseExact(field, text.strip());
    }

    /** Whether a text begins with a word; capitals do not matter. */
    private static boolean starts(String text, String word) {
        return text.regionMatches(true, 0, word, 0, word.length());
    }

    /** A refusal of the whole text. */
    private static Refusal refusal(String field, String text, String hint) {
        return new Refusal("unreadable-air", field, text, FORM, hint);
    }
}
