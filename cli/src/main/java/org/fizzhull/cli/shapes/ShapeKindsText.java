package org.fizzhull.cli.shapes;

import org.fizzhull.answer.body.ShapeKindsAnswer;
import org.fizzhull.cli.text.Table;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;
import org.fizzhull.shape.listing.ShapeParameter;

/** The list of shape kinds with their parameters. */
public final class ShapeKindsText {
    private ShapeKindsText() {}

    /** As a table, an example a kind. */
    public static String table() {
        StringBuilder out = new StringBuilder("Shapes, with sizes of the piece (inside the mould):\n\n");
        for (ShapeKind kind : ShapeKindsAnswer.kinds()) {
            out.append("  ").append(kind.usage()).append('\n');
            Table.indented(out, 6, kind.sentence() + also(kind));
            for (ShapeParameter parameter : kind.parameters()) {
                if (!parameter.required()) {
                    Table.indented(out, 6, parameter.key() + " may be left away: then " + parameter.standard() + '.');
                }
            }
        }
        out.append('\n')
                .append(Table.paragraph("Figures of one: fizzhull shapes \""
                        + ShapeKinds.all().get(0).example() + '"'));
        return out.toString();
    }

    private static String also(ShapeKind kind) {
        return kind.aliases().isEmpty() ? "" : " Also called " + String.join(", ", kind.aliases()) + '.';
    }
}
