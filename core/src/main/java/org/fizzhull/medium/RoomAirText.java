package org.fizzhull.medium;

import java.util.List;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;

/**
 * Room air as people write it: {@code 21 C, 55 %}, or, from the weather report, {@code outside 8 C, 85 %, heated to 21
 * C}. The second is turned into the air of the room by {@link RoomAir#heated}. Stateless.
 */
final class RoomAirText {
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
    static RoomAir parse(String field, String text) {
        List<String> parts = QuantityText.parts(text);
        if (parts.size() < 2) {
            throw refusal(field, text, "Give a temperature and a relative humidity.");
        }
        String temperature = parts.get(0);
        if (!starts(temperature, OUTSIDE)) {
            if (parts.size() > 2) {
                throw refusal(field, text, "A third part belongs to outside air only.");
            }
            return RoomAir.of(
                    RoomAir.TEMPERATURE.parseExact(field, temperature),
                    RoomAir.HUMIDITY.parseExact(field, parts.get(1)));
        }
        if (parts.size() != 3 || !starts(parts.get(2), HEATED)) {
            throw refusal(field, text, "Say to what temperature the outside air is heated.");
        }
        return RoomAir.heated(
                RoomAir.OUTSIDE.parseExact(
                        field, temperature.substring(OUTSIDE.length()).strip()),
                RoomAir.HUMIDITY.parseExact(field, parts.get(1)),
                RoomAir.TEMPERATURE.parseExact(
                        field, parts.get(2).substring(HEATED.length()).strip()));
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
