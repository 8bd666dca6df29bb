package org.fizzhull.cli.text;

import java.util.List;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;

/** What a piece carries, in words. */
final class LoadWords {
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
                    .append(NumberText.grams(toppings.get(i).mass()))
                    .append(" of ")
                    .append(toppings.get(i).name());
        }
        text.append(toppings.isEmpty() ? "" : " on top");
        double inside = inside(loaded);
        if (inside > 0) {
            text.append(toppings.isEmpty() ? with : ", ")
                    .append(NumberText.grams(inside))
                    .append(" pressed in");
        }
        return text.toString();
    }

    /** {@code  round a thing of 8 g}; empty where nothing is inside. */
    static String round(Shape shape) {
        return shape instanceof Loaded loaded && !loaded.held().isEmpty()
                ? " round " + (loaded.held().size() == 1 ? "a thing of " : "things of ")
                        + NumberText.grams(inside(loaded))
                : "";
    }

    private static double inside(Loaded loaded) {
        double sum = 0;
        for (Loaded.Held held : loaded.held()) {
            sum += held.thing().mass();
        }
        return sum;
    }
}
