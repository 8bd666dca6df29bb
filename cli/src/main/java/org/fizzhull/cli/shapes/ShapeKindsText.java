package org.fizzhull.cli.shapes;

import java.util.regex.Pattern;
import org.fizzhull.answer.body.ShapeKindsAnswer;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.cli.text.Table;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;
import org.fizzhull.shape.listing.ShapeParameter;

/**
 * The list of shape kinds with their parameters. Its sizes are examples: where inches or ounces are shown they are other
 * examples, on the marks of such a ruler and scale, and are typed back as they stand.
 */
final class ShapeKindsText {
    private static final Pattern EXAMPLE = Pattern.compile("(\\d+) (mm|g)\\b");

    /** Below this a size is a wall, an edge or a seam. */
    private static final double SMALL = Unit.MILLIMETRE.toSi(10);

    private final ShownUnits units;

    private ShapeKindsText(ShownUnits units) {
        this.units = units;
    }

    /** A line for each kind. */
    static String brief(ShownUnits units) {
        ShapeKindsText text = new ShapeKindsText(units);
        Table table = new Table();
        for (ShapeKind kind : ShapeKindsAnswer.kinds()) {
            String other = kind.aliases().isEmpty() ? "" : ", " + kind.aliases().get(0);
            table.row(kind.name() + other, text.examples(kind.usage()));
        }
        return "Shapes, with sizes of the piece (inside the mould); what stands in [ ] may go:\n\n" + table + '\n'
                + Table.paragraph("Figures of one: fizzhull shapes \"" + text.first() + "\"; more: --explain");
    }

    /** An example and a sentence for each kind, and what is taken for what may be left out. */
    static String whole(ShownUnits units) {
        ShapeKindsText text = new ShapeKindsText(units);
        StringBuilder out = new StringBuilder("Shapes, with sizes of the piece (inside the mould):\n\n");
        for (ShapeKind kind : ShapeKindsAnswer.kinds()) {
            out.append("  ").append(text.examples(kind.usage())).append('\n');
            Table.indented(out, 6, text.examples(kind.sentence()) + also(kind));
            for (ShapeParameter parameter : kind.parameters()) {
                if (!parameter.required()) {
                    Table.indented(out, 6, parameter.key() + " may be left out: then " + parameter.standard() + '.');
                }
            }
        }
        return out.append('\n')
                .append(Table.paragraph("Figures of one: fizzhull shapes \"" + text.first() + '"'))
                .toString();
    }

    private String first() {
        return examples(ShapeKinds.all().get(0).example());
    }

    /** A text with its examples in these units: halves of an inch, small ones and ounces in tenths; none is broken. */
    private String examples(String text) {
        return EXAMPLE.matcher(text).replaceAll(found -> {
            boolean length = found.group(2).equals("mm");
            Unit from = length ? Unit.MILLIMETRE : Unit.GRAM;
            Unit to = length ? units.length() : units.mass();
            double value = from.toSi(Double.parseDouble(found.group(1)));
            double parts = length && value > SMALL ? 2 : 10;
            String number = from == to ? found.group(1) : Decimals.text(Math.rint(to.fromSi(value) * parts) / parts, 6);
            return number + NumberText.UNIT + to.symbol();
        });
    }

    private static String also(ShapeKind kind) {
        return kind.aliases().isEmpty() ? "" : " Also called " + String.join(", ", kind.aliases()) + '.';
    }
}
