package org.fizzhull.cli.option;

import org.apache.commons.cli.Options;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/** What a piece carries: a layer on its top and things pressed into it. */
public final class LoadOptions {
    static final String ON_TOP = "--on-top";
    public static final String INSIDE = "--inside";

    private LoadOptions() {}

    public static void add(Options spec) {
        CommonOptions.value(spec, ON_TOP, "LAYER", "what is strewn on top, such as 6 g coarse salt, 1 g dried petals");
        addInside(spec);
    }

    public static void addInside(Options spec) {
        CommonOptions.value(
                spec, INSIDE, "THING", "a sealed thing pressed in, such as 8 g, 25 mL or 8 g, 25 mL, 20 mm up");
    }

    /** The shape with its load; itself where no option names one. */
    static Shape on(Arguments arguments, Shape shape) {
        Shape loaded = shape;
        try {
            for (String text : arguments.texts(INSIDE)) {
                loaded = InsideText.read(INSIDE, text).in(loaded);
            }
            if (arguments.has(ON_TOP)) {
                ToppingText reader =
                        new ToppingText(ON_TOP, MakingOptions.table(arguments), MakingOptions.cups(arguments));
                for (String text : arguments.texts(ON_TOP)) {
                    for (var topping : reader.read(text)) {
                        loaded = Loaded.with(loaded, topping);
                    }
                }
            }
        } catch (Refusal refusal) {
            throw switch (refusal.field()) {
                case "inside" -> refusal.of(INSIDE);
                case "on top" -> refusal.of(ON_TOP);
                default -> refusal;
            };
        }
        return loaded;
    }
}
