package org.fizzhull.cli.shapes;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.Table;
import org.fizzhull.shape.text.ShapeKind;
import org.fizzhull.shape.text.ShapeKinds;
import org.fizzhull.shape.text.ShapeParameter;

/** The list of shape kinds with their parameters. */
public final class ShapeKindsText {
    private ShapeKindsText() {}

    /** As a table, an example a kind. */
    public static String table() {
        StringBuilder out = new StringBuilder("Shapes, with sizes of the piece (inside the mould):\n\n");
        for (ShapeKind kind : kinds()) {
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

    /** As JSON. */
    public static void json(OutputStream out) {
        try (Json json = Json.open(out, "shapes")) {
            json.array("kinds");
            for (ShapeKind kind : kinds()) {
                json.object()
                        .text("name", kind.name())
                        .texts("aliases", kind.aliases())
                        .text("meaning", kind.sentence())
                        .text("example", kind.example())
                        .array("parameters");
                for (ShapeParameter parameter : kind.parameters()) {
                    json.object()
                            .text("name", parameter.key())
                            .text("takes", parameter.takes().name().toLowerCase(java.util.Locale.ROOT))
                            .text("meaning", parameter.meaning())
                            .flag("required", parameter.required())
                            .text("left_out", parameter.required() ? null : parameter.standard())
                            .end();
                }
                json.endArray().end();
            }
            json.endArray().notices(List.of());
        }
    }

    private static List<ShapeKind> kinds() {
        List<ShapeKind> kinds = new ArrayList<>(ShapeKinds.all());
        kinds.addAll(ShapeKinds.ofFiles());
        return kinds;
    }

    private static String also(ShapeKind kind) {
        return kind.aliases().isEmpty() ? "" : " Also called " + String.join(", ", kind.aliases()) + '.';
    }
}
