package org.fizzhull.cli.drying;

import java.io.PrintStream;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.answer.body.DryReport;
import org.fizzhull.cli.file.WeightsFile;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.DryingLogs;
import org.fizzhull.cli.option.DryingOptions;
import org.fizzhull.cli.option.LoadOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/** {@code dry}: when is it dry here, what never dries, what goes on the label? */
public final class DryCommand implements Command {
    private static final String READY_BY = "--ready-by";

    /** An older word for the same. */
    private static final String SELL_BY = "--sell-by";

    private static final double DAY = 86400;

    /** Looked at where no time is given and it does not get dry. */
    private static final double FORTNIGHT = 14 * DAY;

    @Override
    public String purpose() {
        return "when is it dry here, what never dries, how much fizz is lost, what goes on the label?";
    }

    @Override
    public String[] examples() {
        String ball = "fizzhull dry --recipe lemon.yaml --shape \"sphere(diameter=65 mm)\" --fill 146 g ";
        return new String[] {
            ball + "--air 21 C, 55 %",
            ball + "--air outside 8 C, 85 %, heated to 21 C --on tray --wrap-after 2 d --wrap shrink film",
            ball + "--air 21 C, 50 % --start 2026-08-14 18:30 --log weights.csv",
            ball + "--air 21 C, 50 % --dry-for 3 d --stored 60 d --stored-air 20 C, 60 % --chart dry.svg",
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.addShape(spec);
        LoadOptions.add(spec);
        MakingOptions.add(spec);
        DryingOptions.add(spec);
        DryingLogs.add(spec);
        CommonOptions.value(spec, READY_BY, "WHEN", "when it has to be ready, such as 2026-08-20 09:00");
        CommonOptions.value(spec, SELL_BY, "WHEN", "an older word for --ready-by");
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE.svg", "writes the drying curve");
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Shape shape = QuestionOptions.shape(arguments);
        Blend blend = Blend.of(MakingOptions.required(arguments));
        arguments.required(
                DryingOptions.AIR,
                "temperature and humidity of the room, such as --air \"21 C, 55 %\"",
                "Hang a hygrometer beside the rack.");
        Optional<LocalDateTime> start = DryingLogs.start(arguments);
        Optional<LocalDateTime> readyBy = readyBy(arguments, start);
        Sampling sampling = DrawOptions.sampling(arguments);
        Optional<DryLog> log = arguments
                .text(DryingLogs.LOG)
                .map(file -> WeightsFile.read(arguments.files(), DryingLogs.LOG, file, start));
        DryPredictor predictor = DryPredictor.standard()
                .with(BenchOption.factors(arguments))
                .with(sampling)
                .with(DrawOptions.workers(arguments, sampling));
        Making making =
                making(arguments, blend, shape, predictor, log.map(DryLog::end).orElse(0.0));
        predictor = predictor
                .with(QuestionOptions.factors(arguments, making))
                .with(MeasuredOptions.read(arguments, Question.of(shape, making)));
        DryForecast forecast = (log.isPresent() ? predictor.with(log.get()) : predictor).forecast(shape, making);
        DryReport report = new DryReport(forecast, start, readyBy);
        CommonOptions.end(arguments, new DryText(report), chart, () -> DryingPicture.of(report), out, err);
    }

    /** Without a time, it is looked at for somewhat longer than it takes. */
    public static Making making(Arguments arguments, Blend blend, Shape shape, DryPredictor predictor) {
        return making(arguments, blend, shape, predictor, 0);
    }

    /** The same; a log of weighings has to end before the plan does. */
    private static Making making(
            Arguments arguments, Blend blend, Shape shape, DryPredictor predictor, double weighedLast) {
        List<Notice> notices = new ArrayList<>();
        DryingConditions conditions = DryingOptions.read(arguments, FORTNIGHT, notices);
        DryingPlan plan = conditions.plan(shape);
        if (!DryingOptions.timed(arguments)) {
            double ready = predictor
                    .readyAfter(shape, making(arguments, blend, shape, plan))
                    .orElse(FORTNIGHT / 1.6);
            double days = Math.min(28, Math.max(2, Math.ceil(1.6 * ready / DAY)));
            days = Math.max(days, Math.ceil(weighedLast / DAY));
            notices.clear();
            DryingConditions usual = DryingOptions.read(arguments, days * DAY, notices);
            plan = plan.openFor(usual.open());
        } else if (weighedLast > conditions.drying()) {
            throw new Refusal(
                    "conflict",
                    DryingLogs.LOG,
                    "a weighing after " + NumberText.tenths(weighedLast / DAY) + " days",
                    "weighings within the time of --dry-for",
                    "Give a longer --dry-for, or leave it out.");
        }
        return making(arguments, blend, shape, plan.noting(notices));
    }

    private static Making making(Arguments arguments, Blend blend, Shape shape, DryingPlan plan) {
        return MakingOptions.making(arguments, blend, shape, plan)
                .orElseThrow(() -> new Refusal(
                        "missing-option",
                        MakingOptions.FILL,
                        "",
                        "--fill 146 g or --press firm",
                        "Say how much damp mix goes into the mould, or how hard it is pressed."));
    }

    private static Optional<LocalDateTime> readyBy(Arguments arguments, Optional<LocalDateTime> start) {
        Optional<String> text = arguments.text(READY_BY);
        String option = READY_BY;
        if (text.isPresent() && arguments.has(SELL_BY)) {
            throw new Refusal("conflict", SELL_BY, "both", READY_BY + " alone", "They mean the same.");
        }
        if (text.isEmpty()) {
            text = arguments.text(SELL_BY);
            option = SELL_BY;
        }
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String allowed = "a day, such as 2026-08-20, or with its hour, 2026-08-20 09:00";
        String words = text.get().strip();
        LocalDateTime by = DryingLogs.date(option, words.length() == 10 ? words + " 00:00" : words, allowed);
        if (start.isEmpty()) {
            throw new Refusal(
                    "missing-option",
                    DryingLogs.START,
                    "",
                    "when it was pressed, such as " + DryingLogs.START + " 2026-08-14 18:30",
                    option + " needs a day to count from.");
        }
        if (!by.isAfter(start.get())) {
            throw new Refusal("conflict", option, words, "a time after " + DryingLogs.START, "Check the two dates.");
        }
        return Optional.of(by);
    }
}
