package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;

import java.util.List;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;

/**
 * What a piece carries: the keys {@code on_top} (toppings, which come off with the face under them: {@code name}, {@code mass_g}, {@code
 * volume_mL}) and {@code inside} (things pressed in: {@code mass_g}, {@code volume_mL}, {@code centre_mm} in the body's frame), of
 * every answer about one piece.
 */
final class LoadKeys {
    /** Millilitres in a cubic metre. */
    private static final double MILLILITRES = 1e6;

    private LoadKeys() {}

    /** Writes the two arrays; empty for a piece that carries nothing. */
    static void write(AnswerWriter to, Shape shape) {
        List<Topping> toppings = shape instanceof Loaded loaded ? loaded.toppings() : List.of();
        List<Loaded.Held> inside = shape instanceof Loaded loaded ? loaded.held() : List.of();
        to.objects(
                        "on_top",
                        toppings,
                        topping -> to.text("name", topping.name())
                                .number("mass_g", inGrams(topping.mass()))
                                .number("volume_mL", topping.volume() * MILLILITRES))
                .objects(
                        "inside",
                        inside,
                        held -> to.number("mass_g", inGrams(held.thing().mass()))
                                .number("volume_mL", held.thing().volume() * MILLILITRES)
                                .numbers(
                                        "centre_mm",
                                        inMillimetres(held.centre().x()),
                                        inMillimetres(held.centre().y()),
                                        inMillimetres(held.centre().z())));
    }
}
