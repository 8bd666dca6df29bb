package org.fizzhull.cli.deciding;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.why.Diagnoser;
import org.fizzhull.decide.why.Seen;
import org.fizzhull.decide.why.Symptom;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.NearName;

/** {@code why}: something went wrong; what was it, and what check tells? */
public final class WhyCommand implements Command {
    private static final String SAW = WhyText.SAW;
    private static final String SEEN = WhyText.SEEN;

    /** More draws for each of a dozen causes tell nothing that a maker could use. */
    private static final int MOST_SAMPLES = 512;

    @Override
    public String purpose() {
        return "something went wrong: why, and which check tells?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull why --saw sank --seen \"across 65 mm, 149 g\" --shape \"sphere(diameter=65 mm)\" --recipe"
                    + " cli/src/doc/recipes/lemon.yaml --fill 140 g --air 21 C, 55 % --dry-for 2 d",
            "fizzhull why --saw never-dried --shape \"dome(diameter=80 mm)\" --recipe cli/src/doc/recipes/harbour-clay.yaml"
                    + " --press firm --air 18 C, 65 % --dry-for 3 d",
            "fizzhull why --saw sank --seen \"149 g\" --shape \"sphere(diameter=65 mm)\" --mass 145 g --measured-lift 151 g"
                    + " after 5 s at 142 g",
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        CommonOptions.value(spec, SAW, "WHAT", "what was seen: " + words());
        CommonOptions.value(
                spec,
                SEEN,
                "SIZES",
                "what was measured: across 67 mm, 141 g, fizzed 4 min, room 70 %, lost 2 g (in two days in a dry room)");
        QuestionOptions.add(spec);
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE", "writes the causes as bars, .svg or .png");
        CommonOptions.drawing(spec);
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Symptom symptom = symptom(arguments.required(SAW, words(), "Say what was seen, such as --saw sank."));
        Seen seen = SeenText.read(SEEN, arguments.text(SEEN).orElse(""));
        Question question = QuestionOptions.read(arguments);
        Design design = DesignOptions.read(arguments, question);
        Sampling all = DrawOptions.sampling(arguments);
        AdviseCommand.drawn(all);
        Sampling sampling = new Sampling(all.seed(), Math.min(MOST_SAMPLES, all.samples()));
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Why why = Diagnoser.standard()
                .with(BenchOption.factors(arguments))
                .with(MeasuredOptions.read(arguments, question))
                .with(sampling)
                .with(DrawOptions.workers(arguments, all))
                .diagnose(design, symptom, seen);
        WhyText text = new WhyText(why, sampling, arguments.typed());
        CommonOptions.end(arguments, text, chart, () -> WhyPicture.of(why), out, err);
    }

    private static Symptom symptom(String word) {
        for (Symptom symptom : Symptom.values()) {
            if (symptom.word().equals(word)) {
                return symptom;
            }
        }
        String near = NearName.hint(word, List.of(words().split(", ")));
        throw new Refusal("unknown-word", SAW, word, words(), near.isEmpty() ? "Write one of these words." : near);
    }

    private static String words() {
        StringBuilder words = new StringBuilder();
        for (Symptom symptom : Symptom.values()) {
            words.append(words.isEmpty() ? "" : ", ").append(symptom.word());
        }
        return words.toString();
    }
}
