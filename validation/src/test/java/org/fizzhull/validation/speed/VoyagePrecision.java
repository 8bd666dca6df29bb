package org.fizzhull.validation.speed;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.fizzhull.voyage.result.Voyage;

/**
 * Work against precision of both voyages, as the tables of core/docs/physics/voyage.md, 9: processor time of a warm voyage and errors
 * against the same method at its finest, over five shapes from what floats to what stays down.
 */
public final class VoyagePrecision {
    private static final Bath BATH = Bath.at(Units.celsius(38));
    private static final FizzParameters FIZZ = FizzParameters.standard();
    private static final VoyageParameters WATER = VoyageParameters.standard();
    private static final double FINEST = 1e-11;
    private static final int MOST_DEPTHS = 12_800;
    private static final int WARM_UP = 3;

    private static final String[] SHAPES = {
        "sphere(diameter=65 mm)",
        "dome(diameter=80 mm)",
        "puck(diameter=70 mm, height=28 mm)",
        "ring(diameter=90 mm, tube=30 mm)",
        "bowl(diameter=90 mm, wall=15 mm)"
    };

    private VoyagePrecision() {}

    /** What is compared of a voyage; the rise time is NaN where it does not rise later. */
    private record Answer(Voyage.Outcome outcome, double fizzTime, double riseTime) {}

    private record Work(List<Answer> answers, double microseconds) {}

    private interface EquationOfMotion {
        Answer run(Piece piece);
    }

    private interface Maker {
        EquationOfMotion of(Shape shape);
    }

    /** Prints both tables. */
    public static void main(String[] args) {
        System.out.println(
                "| tolerance | µs | fizz time, mean | largest | rise time, mean | largest | other outcomes |");
        System.out.println("|---:|---:|---:|---:|---:|---:|---:|");
        Work exact = work(shape -> full(shape, FINEST), 1);
        for (int i = 0; i < WARM_UP; i++) {
            work(shape -> full(shape, 1e-6), 5);
        }
        for (double accuracy : new double[] {1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8}) {
            row(String.format(Locale.ROOT, "%.0e", accuracy), work(shape -> full(shape, accuracy), 10), exact);
        }
        System.out.println("| depths | | | | | | |");
        Work fine = work(shape -> quick(shape, MOST_DEPTHS), 1);
        for (int i = 0; i < WARM_UP; i++) {
            work(shape -> quick(shape, 200), 500);
        }
        for (int depths : new int[] {25, 50, 100, 200, 400, 800}) {
            row(Integer.toString(depths), work(shape -> quick(shape, depths), 1000), fine);
        }
    }

    private static EquationOfMotion full(Shape shape, double accuracy) {
        FullVoyage voyages =
                FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), BATH).accurateTo(accuracy);
        return piece -> {
            Voyage voyage = voyages.run(piece, FIZZ, WATER);
            return new Answer(
                    voyage.outcome(), voyage.fizzTime(), voyage.riseTime().orElse(Double.NaN));
        };
    }

    private static EquationOfMotion quick(Shape shape, int depths) {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(shape, Release.DROPPED, depths), BATH);
        return piece -> {
            voyage.run(Launch.of(piece, BATH, FIZZ, WATER));
            return new Answer(voyage.outcome(), voyage.fizzTime(), voyage.riseTime());
        };
    }

    private static Work work(Maker maker, int times) {
        List<Answer> answers = new ArrayList<>();
        long spent = 0;
        for (String text : SHAPES) {
            Shape shape = ShapeText.read(text);
            EquationOfMotion course = maker.of(shape);
            for (double density = 850; density < 1160; density += 15) {
                Piece piece = new Piece(shape, density * shape.volume(), Piece.Makeup.usual());
                long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                Answer answer = course.run(piece);
                for (int i = 1; i < times; i++) {
                    answer = course.run(piece);
                }
                spent += ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
                answers.add(answer);
            }
        }
        return new Work(answers, spent / 1e3 / times / answers.size());
    }

    private static void row(String setting, Work work, Work exact) {
        int others = 0;
        int rises = 0;
        double fizz = 0;
        double worstFizz = 0;
        double rise = 0;
        double worstRise = 0;
        for (int i = 0; i < exact.answers.size(); i++) {
            Answer ours = work.answers.get(i);
            Answer best = exact.answers.get(i);
            double error = Math.abs(ours.fizzTime / best.fizzTime - 1);
            fizz += error / exact.answers.size();
            worstFizz = Math.max(worstFizz, error);
            if (ours.outcome != best.outcome) {
                others++;
            } else if (best.outcome == Voyage.Outcome.RISES_LATER) {
                double late = Math.abs(ours.riseTime - best.riseTime);
                rises++;
                rise += late;
                worstRise = Math.max(worstRise, late);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.1e | %.1e | %.1e s | %.1e s | %d of %d |%n",
                setting,
                work.microseconds,
                fizz,
                worstFizz,
                rise / rises,
                worstRise,
                others,
                exact.answers.size());
    }
}
