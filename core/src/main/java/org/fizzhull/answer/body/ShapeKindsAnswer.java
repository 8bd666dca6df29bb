package org.fizzhull.answer.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.evidence.Notice;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;

/**
 * The kinds of shape with their parameters, as the object of the command {@code shapes} when no shape is given: {@code kinds}
 * with {@code name}, {@code aliases}, {@code meaning}, {@code example} and {@code parameters}, of which {@code left_out} is the
 * value taken where a parameter is not required and not given.
 */
public record ShapeKindsAnswer() implements AnswerBody {
    @Override
    public String command() {
        return "shapes";
    }

    @Override
    public void keys(AnswerWriter to) {
        to.objects(
                "kinds",
                kinds(),
                kind -> to.text("name", kind.name())
                        .texts("aliases", kind.aliases())
                        .text("meaning", kind.sentence())
                        .text("example", kind.example())
                        .objects(
                                "parameters",
                                kind.parameters(),
                                parameter -> to.text("name", parameter.key())
                                        .text("takes", parameter.takes().name().toLowerCase(Locale.ROOT))
                                        .text("meaning", parameter.meaning())
                                        .flag("required", parameter.required())
                                        .text("left_out", parameter.required() ? null : parameter.standard())));
    }

    /** {@return all kinds, those that are read from a file last} */
    public static List<ShapeKind> kinds() {
        List<ShapeKind> kinds = new ArrayList<>(ShapeKinds.all());
        kinds.addAll(ShapeKinds.ofFiles());
        return kinds;
    }

    /** {@return none} */
    @Override
    public List<Notice> notices() {
        return List.of();
    }
}
