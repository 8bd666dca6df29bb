package org.fizzhull.cli.shapes;

import java.io.PrintStream;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.answer.body.ShapeAnswer;
import org.fizzhull.answer.body.ShapeKindsAnswer;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.OpenedFiles;
import org.fizzhull.cli.option.ReportFile;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.cli.text.Table;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;

/** {@code shapes}: the kinds, or the figures of one shape. */
public final class ShapesCommand implements Command {
    @Override
    public String purpose() {
        return "the kinds of shape, or volume, surface and depth profile of one.";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull shapes",
            "fizzhull shapes \"dome(diameter=80 mm, height=35 mm)\"",
            "fizzhull shapes \"ring(diameter=90 mm, tube=30 mm)\" --json",
            "fizzhull shapes \"block(length=60 mm, width=40 mm, height=30 mm, edge=4 mm)\" --chart block.png",
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        CommonOptions.value(spec, CommonOptions.CHART, "FILE", "writes a picture of the shape, .svg or .png");
        CommonOptions.reporting(spec);
        return spec;
    }

    @Override
    public String free() {
        return "SHAPE";
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        boolean json = arguments.has(CommonOptions.JSON);
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Optional<String> text = arguments.free();
        if (text.isEmpty()) {
            if (chart.isPresent()) {
                throw new Refusal(
                        "missing-option",
                        "shape",
                        "",
                        "a shape before --chart",
                        "Write the shape first: shapes \"sphere(diameter=65 mm)\" --chart ball.svg.");
            }
            ShownUnits units = CommonOptions.units(arguments);
            ReportFile.of(arguments).ifPresent(file -> file.write(arguments, ShapeKindsText.whole(units), "", ""));
            if (json) {
                JsonSink.write(out, new ShapeKindsAnswer());
            } else {
                boolean explains = arguments.has(CommonOptions.EXPLAIN);
                out.print(Table.plain(explains ? ShapeKindsText.whole(units) : ShapeKindsText.brief(units)));
            }
            return;
        }
        Shape shape = ShapeText.read(text.get(), new OpenedFiles(arguments.files()));
        if (chart.isPresent()) {
            chart.get().write(ViewsPicture.of(shape));
        }
        ReportFile.of(arguments)
                .ifPresent(file -> file.write(arguments, ShapesText.of(shape), "", ViewsPicture.of(shape)));
        if (json) {
            JsonSink.write(out, new ShapeAnswer(shape));
        } else {
            String words = arguments.has(CommonOptions.QUIET) ? ShapesText.sentence(shape) : ShapesText.of(shape);
            out.print(CommonOptions.units(arguments).in(words));
        }
    }
}
