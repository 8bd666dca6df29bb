package org.fizzhull.cli.text;

import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;

import java.util.List;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;

/** What a piece carries, in words and in JSON. */
public final class LoadWords {
    private static final double MILLILITRES = 1e6;

    private LoadWords() {}

    /** {@code  with 6 g of coarse sea salt on top and 8 g inside}, behind the piece, off by a comma or not; empty without a load. */
    static String with(Shape shape, boolean comma) {
        if (!(shape instanceof Loaded loaded)) {
            return "";
        }
        String with = comma ? ", with " : " with ";
        StringBuilder text = new StringBuilder();
        List<Topping> toppings = loaded.toppings();
        for (int i = 0; i < toppings.size(); i++) {
            text.append(i == 0 ? with : i == toppings.size() - 1 ? " and " : ", ")
                    .append(Say.grams(toppings.get(i).mass()))
                    .append(" of ")
                    .append(toppings.get(i).name());
        }
        text.append(toppings.isEmpty() ? "" : " on top");
        double inside = inside(loaded);
        if (inside > 0) {
            text.append(toppings.isEmpty() ? with : ", ")
                    .append(Say.grams(inside))
                    .append(" pressed in");
        }
        return text.toString();
    }

    /** {@code  round a thing of 8 g}; empty where nothing is inside. */
    static String round(Shape shape) {
        return shape instanceof Loaded loaded && !loaded.held().isEmpty()
                ? " round " + (loaded.held().size() == 1 ? "a thing of " : "things of ") + Say.grams(inside(loaded))
                : "";
    }

    private static double inside(Loaded loaded) {
        double sum = 0;
        for (Loaded.Held held : loaded.held()) {
            sum += held.thing().mass();
        }
        return sum;
    }

    /** Whether the topping shows: {@code the coarse sea salt in sight}; empty where there is none. */
    public static String shows(Shape shape, FloatingAttitude rest) {
        if (rest.topping() == FloatingAttitude.Topping.NONE || !(shape instanceof Loaded loaded)) {
            return "";
        }
        String name = loaded.toppings().size() == 1
                ? "the " + loaded.toppings().get(0).name() + ' '
                : "the topping ";
        return switch (rest.topping()) {
            case SHOWS -> name + "in sight";
            case AT_WATER_LINE -> name + "at the water line";
            default -> name + "under water";
        };
    }

    /** The two keys of the load; empty arrays without one. */
    public static void json(Json json, Shape shape) {
        json.array("on_top");
        if (shape instanceof Loaded loaded) {
            for (Topping topping : loaded.toppings()) {
                json.object()
                        .text("name", topping.name())
                        .number("mass_g", inGrams(topping.mass()))
                        .number("volume_mL", topping.volume() * MILLILITRES)
                        .end();
            }
        }
        json.endArray().array("inside");
        if (shape instanceof Loaded loaded) {
            for (Loaded.Held held : loaded.held()) {
                json.object()
                        .number("mass_g", inGrams(held.thing().mass()))
                        .number("volume_mL", held.thing().volume() * MILLILITRES)
                        .numbers(
                                "centre_mm",
                                inMillimetres(held.centre().x()),
                                inMillimetres(held.centre().y()),
                                inMillimetres(held.centre().z()))
                        .end();
            }
        }
        json.endArray();
    }
}
