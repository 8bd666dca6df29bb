package org.fizzhull.cli.command;

import java.io.PrintStream;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.WeightsFile;
import org.fizzhull.cli.picture.DryingPicture;
import org.fizzhull.cli.text.DryReport;
import org.fizzhull.cli.text.DryText;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.WeighingLog;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.DryingConditions;
import org.fizzhull.forecast.DryingPlan;
import org.fizzhull.forecast.Making;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/** {@code dry}: when is it dry here, what never dries, what goes on the label? */
final class DryCommand implements Command {
    private static final String START = "--start";
    private static final String SELL_BY = "--sell-by";
    private static final String LOG = "--log";
    private static final double DAY = 86400;

    /** Looked at where no time is given and it does not get dry. */
    private static final double FORTNIGHT = 14 * DAY;

    /** Standard uncertainty of one weighing by a scale of whole grams and by one of tenths, kg [assumed]. */
    private static final double COARSE_SCALE = 0.5e-3;

    private static final double FINE_SCALE = 0.1e-3;

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
        CommonOptions.value(spec, START, "WHEN", "when it was pressed, such as 2026-08-14 18:30: gives dates");
        CommonOptions.value(spec, SELL_BY, "WHEN", "when it has to be ready, such as 2026-08-20");
        CommonOptions.value(spec, LOG, "FILE.csv", "weighings of one piece: piece, when, weight_g");
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
        Optional<LocalDateTime> start = start(arguments);
        Optional<LocalDateTime> sellBy = sellBy(arguments, start);
        Sampling sampling = DrawOptions.sampling(arguments);
        DryPredictor predictor = DryPredictor.standard().with(sampling).with(DrawOptions.workers(arguments, sampling));
        Making making = making(arguments, blend, shape, predictor);
        Optional<List<WeightsFile.Weighings>> weighings =
                arguments.text(LOG).map(file -> WeightsFile.read(LOG, file, start));
        Optional<WeighingLog> log = Optional.empty();
        String weighed = "";
        if (weighings.isPresent()) {
            DryingCourse course = predictor.course(shape, making);
            for (WeightsFile.Weighings piece : weighings.get()) {
                WeighingLog fit = fit(course, piece, shape.insetMass());
                if (log.isEmpty()
                        || fit.readyAfter().median() > log.get().readyAfter().median()) {
                    log = Optional.of(fit);
                    weighed = piece.piece();
                }
            }
        }
        DryForecast forecast = predictor.forecast(shape, making);
        DryReport report = new DryReport(forecast, log, weighed, start, sellBy);
        chart.ifPresent(file -> file.write(DryingPicture.of(report)));
        CommonOptions.end(arguments, new DryText(report), out, err);
    }

    /** Without a time, it is looked at for somewhat longer than it takes. */
    static Making making(Arguments arguments, Blend blend, Shape shape, DryPredictor predictor) {
        List<Notice> notices = new ArrayList<>();
        DryingPlan plan = DryingOptions.read(arguments, FORTNIGHT, notices).plan(shape);
        if (!DryingOptions.timed(arguments)) {
            double ready = predictor
                    .course(shape, making(arguments, blend, shape, plan))
                    .readyAfter()
                    .orElse(FORTNIGHT / 1.6);
            double days = Math.min(28, Math.max(2, Math.ceil(1.6 * ready / DAY)));
            notices.clear();
            DryingConditions usual = DryingOptions.read(arguments, days * DAY, notices);
            plan = plan.openFor(usual.open());
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

    /** The course leaves out what does not dry, kg; the scale does not. */
    private static WeighingLog fit(DryingCourse course, WeightsFile.Weighings piece, double load) {
        if (course.readyAfter().isEmpty()) {
            throw new Refusal(
                    "never-ready",
                    LOG,
                    "weighings of a piece that is never dry in this air",
                    "air in which it dries within 60 days",
                    "Check --air; without --log the answer says what humidity would do.");
        }
        int n = piece.times().size();
        double[] times = new double[n];
        double[] weights = new double[n];
        boolean whole = true;
        for (int i = 0; i < n; i++) {
            times[i] = piece.times().get(i);
            double grams = 1e3 * piece.weights().get(i);
            weights[i] = piece.weights().get(i) - load;
            whole &= Math.abs(grams - Math.rint(grams)) < 1e-6;
        }
        return WeighingLog.fit(course, times, weights, whole ? COARSE_SCALE : FINE_SCALE);
    }

    private static Optional<LocalDateTime> start(Arguments arguments) {
        Optional<String> text = arguments.text(START);
        return text.map(when -> date(START, when, "a day and an hour, such as 2026-08-14 18:30"));
    }

    private static Optional<LocalDateTime> sellBy(Arguments arguments, Optional<LocalDateTime> start) {
        Optional<String> text = arguments.text(SELL_BY);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String allowed = "a day, such as 2026-08-20";
        LocalDateTime by = text.get().length() == 10
                ? day(text.get(), allowed).atStartOfDay()
                : date(SELL_BY, text.get(), allowed);
        if (start.isEmpty()) {
            throw new Refusal(
                    "missing-option",
                    START,
                    "",
                    "when it was pressed, such as " + START + " 2026-08-14 18:30",
                    SELL_BY + " needs a day to count from.");
        }
        if (!by.isAfter(start.get())) {
            throw new Refusal("conflict", SELL_BY, text.get(), "a time after " + START, "Check the two dates.");
        }
        return Optional.of(by);
    }

    private static LocalDate day(String text, String allowed) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refusal("unreadable-date", SELL_BY, text, allowed, "Year, month, day: 2026-08-20.");
        }
    }

    private static LocalDateTime date(String option, String text, String allowed) {
        try {
            return LocalDateTime.parse(text.strip().replace(' ', 'T'));
        } catch (DateTimeParseException e) {
            throw new Refusal("unreadable-date", option, text, allowed, "Year, month, day, then the hour: 18:30.");
        }
    }
}
