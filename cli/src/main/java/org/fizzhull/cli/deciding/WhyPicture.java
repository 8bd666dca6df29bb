package org.fizzhull.cli.deciding;

import java.util.List;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.decide.why.Why;

/** Causes as bars, likeliest first: dark how likely each is, beside it how often such a batch shows what was seen. */
public final class WhyPicture {
    private static final double WIDTH = 860;
    private static final double TOP = 96;
    private static final double LINE = 36;
    private static final double UNDER = 46;
    private static final double LEFT = 24;
    private static final double BAR_HEIGHT = 14;
    private static final double LEAST = 0.005;

    private static final String WORDS = "fill=\"#222\"";
    private static final String SMALL = "fill=\"#555\" font-size=\"12\"";
    private static final String CHANCE = "fill=\"#2a6f86\"";
    private static final String SHOWS = "fill=\"#d9b98a\"";
    private static final String RULE = "stroke=\"#e3e3e3\"";

    private WhyPicture() {}

    /** The SVG document. */
    public static String of(Why why) {
        List<Why.Chance> causes = why.causes().stream()
                .filter(chance -> chance.probability() >= LEAST)
                .toList();
        double bottom = TOP + LINE * causes.size();
        Axis axis = Axis.of(0, 100, 350, 790, 5);
        Svg svg = new Svg(WIDTH, bottom + UNDER, "Why it went wrong", NumberText.plain(WhyText.sentence(why)));
        svg.rect(0, 0, WIDTH, bottom + UNDER, "fill=\"#fff\"");
        svg.text(
                LEFT,
                34,
                WORDS + " font-size=\"18\" font-weight=\"bold\"",
                "Most likely: " + why.causes().get(0).cause().words());
        svg.text(LEFT, TOP - 34, SMALL, "cause, likeliest first");
        svg.text(axis.at(0), TOP - 34, SMALL, "chance, %");
        for (double tick : axis.ticks()) {
            svg.line(axis.at(tick), TOP - 10, axis.at(tick), bottom, RULE);
            svg.text(axis.at(tick), TOP - 16, SMALL + " text-anchor=\"middle\"", NumberText.whole(tick));
        }
        for (int i = 0; i < causes.size(); i++) {
            Why.Chance chance = causes.get(i);
            double middle = TOP + LINE * (i + 0.5);
            svg.text(
                    LEFT,
                    middle + 4,
                    WORDS + " font-size=\"13\"",
                    chance.cause().words());
            bar(svg, axis, middle - BAR_HEIGHT, chance.probability(), CHANCE);
            if (why.computed()) {
                bar(svg, axis, middle + 1, chance.showsIt(), SHOWS);
            }
            svg.text(axis.at(100) + 8, middle + 4, WORDS + " font-size=\"13\"", percent(chance.probability()));
        }
        String legend = why.computed()
                ? "Dark: how likely the cause is after what was seen. Light: how often a batch with it shows "
                        + why.symptom().word() + '.'
                : "How likely each cause is by what was measured alone; what was seen is not computed.";
        svg.text(LEFT, bottom + 26, SMALL, legend);
        return svg.document();
    }

    private static String percent(double chance) {
        long percent = Math.round(100 * chance);
        return percent < 1 ? "below 1 %" : percent > 99 ? "above 99 %" : percent + " %";
    }

    private static void bar(Svg svg, Axis axis, double top, double share, String fill) {
        svg.rect(axis.at(0), top, Math.max(1, axis.at(100 * share) - axis.at(0)), BAR_HEIGHT - 2, fill);
    }
}
