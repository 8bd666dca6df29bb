package org.fizzhull.decide;

import java.util.OptionalDouble;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;

/**
 * A mould as it stands in a catalogue, the user's own or {@link GenericMoulds}. What pressing needs of a mould is {@code
 * pressing.Mould}. Immutable.
 *
 * @param name what its owner calls it
 * @param shape form of the piece, that is, the inside of the mould
 * @param cavities pieces that one mould makes at a time, 1 or more
 * @param price price of the mould in the owner's money, 0 or more; empty where it is not known
 * @param material what it is made of; empty where it is not known
 * @param note for the reader; may be empty
 */
public record Mould(String name, Shape shape, int cavities, OptionalDouble price, String material, String note) {
    /** As for a pack of an ingredient. */
    private static final double MOST_MONEY = 1e9;

    /**
     * Refuses a mould without a name, without a cavity, or with a price that is none.
     *
     * @param name what its owner calls it
     * @param shape form of the piece, that is, the inside of the mould
     * @param cavities pieces that one mould makes at a time, 1 or more
     * @param price price of the mould in the owner's money, 0 or more; empty where it is not known
     * @param material what it is made of; empty where it is not known
     * @param note for the reader; may be empty
     * @throws Refusal {@code missing} for no name, {@code out-of-range} for no cavity or a negative price
     */
    public Mould {
        Given.all("name, shape, price, material, note", name, shape, price, material, note);
        if (name.isBlank()) {
            throw new Refusal("missing", "name", "", "a name", "Say how you call this mould.");
        }
        if (cavities < 1) {
            throw new Refusal(
                    "out-of-range",
                    "cavities",
                    Integer.toString(cavities),
                    "1 or more",
                    "Count the pieces that the mould makes at a time.");
        }
        if (price.isPresent() && !(price.getAsDouble() >= 0 && price.getAsDouble() <= MOST_MONEY)) {
            throw new Refusal(
                    "out-of-range",
                    "price",
                    price.getAsDouble() + "",
                    "0 to 1e9",
                    "Leave the price away where it is not known.");
        }
    }

    /**
     * {@return a mould of which only the shape is known; its name is the shape text}
     *
     * @param shape form of the piece, that is, the inside of the mould
     */
    public static Mould of(Shape shape) {
        return new Mould(shape.text(), shape, 1, OptionalDouble.empty(), "", "");
    }

    /** {@return whether its owner gave it a name of its own} */
    public boolean named() {
        return !name.equals(shape.text());
    }
}
