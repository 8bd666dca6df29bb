package org.fizzhull.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.fizzhull.decide.Advice.Need;
import org.fizzhull.forecast.BatchShare;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.uncertainty.Workers;

/**
 * Finds the smallest changes that make a piece float to the end with the chance that was asked for.
 *
 * <p>Every lever is followed alone to its smallest rung that reaches the goal, then the levers that help most by two. The
 * search asks with few draws; each proposal is asked anew with all of them, goes one rung further where that falls short, and
 * is dropped where it breaks a limit: a piece that no longer holds, more fragrance than before, a limit of the user's
 * supplier. Proposals are sorted by their effort. Immutable; the same answer for any number of workers.
 */
public final class Adviser {
    private static final int SCREENING_DRAWS = 256;

    /** A lever that adds less than this to the chance does not help. */
    private static final double HELPS = 0.01;

    /** Rungs that a proposal may go beyond what the few draws said. */
    private static final int FURTHER = 3;

    private static final int LEVERS_IN_PAIRS = 4;
    private static final int MOST_CHANGES = 6;
    private static final int DIAGONAL = 8;

    private final FloatPredictor predictor;
    private final Sampling sampling;
    private final Workers workers;
    private final IngredientTable table;
    private final Set<String> locked;

    private Adviser(
            FloatPredictor predictor, Sampling sampling, Workers workers, IngredientTable table, Set<String> locked) {
        this.predictor = predictor;
        this.sampling = sampling;
        this.workers = workers;
        this.table = table;
        this.locked = Set.copyOf(locked);
    }

    /** The usual predictor and draws, on the calling thread, the table of the library, nothing locked. */
    public static Adviser standard() {
        return new Adviser(
                FloatPredictor.standard(), Sampling.standard(), Workers.CALLER, IngredientTable.standard(), Set.of());
    }

    /** With another predictor: other priors, or measurements. */
    public Adviser with(FloatPredictor other) {
        return new Adviser(other, sampling, workers, table, locked);
    }

    /** With other draws; at least 128. */
    public Adviser with(Sampling other) {
        if (other.samples() == 0) {
            throw new IllegalArgumentException("advice needs draws: central values know no chance");
        }
        return new Adviser(predictor, other, workers, table, locked);
    }

    /** With other workers; the answer stays the same to the byte. */
    public Adviser with(Workers others) {
        return new Adviser(predictor, sampling, others, table, locked);
    }

    /** With another table of ingredients, the user's own included. */
    public Adviser with(IngredientTable other) {
        return new Adviser(predictor, sampling, workers, other, locked);
    }

    /** Keeping ingredients as they are, by their names in the table. */
    public Adviser keeping(Set<String> names) {
        return new Adviser(predictor, sampling, workers, table, names);
    }

    /** The advice for a design. */
    public Advice advise(Design design, Goal goal) {
        Appraiser appraiser = new Appraiser(predictor, sampling, workers);
        Forecast forecast = appraiser.forecast(design);
        Appraisal now = appraiser.appraise(design, forecast);
        if (now.chance() >= goal.chance()) {
            return new Advice(goal, design, forecast, now, List.of(), Need.NOTHING);
        }
        List<Change> changes = new Search(appraiser, design, goal, now).changes();
        boolean reached = changes.stream().anyMatch(Change::reachesGoal);
        boolean open = now.chance() > BatchShare.NEARLY_NONE
                && appraiser.batch(forecast).undecided();
        Need need = open ? Need.A_MEASUREMENT_FIRST : reached ? Need.A_CHANGE : Need.ANOTHER_DESIGN;
        return new Advice(goal, design, forecast, now, changes, need);
    }

    /** A lever and the rung it was followed to. */
    private record Followed(Lever lever, int rung, double chance) {}

    /** One search. */
    private final class Search {
        private final Appraiser appraiser;
        private final Design design;
        private final Goal goal;
        private final Appraisal now;
        private final double before;

        Search(Appraiser appraiser, Design design, Goal goal, Appraisal now) {
            this.appraiser = appraiser;
            this.design = design;
            this.goal = goal;
            this.now = now;
            this.before = appraiser.chance(design, SCREENING_DRAWS);
        }

        List<Change> changes() {
            List<Followed> followed = new ArrayList<>();
            for (Lever lever : Levers.of(design, table, locked)) {
                follow(lever).ifPresent(followed::add);
            }
            List<Change> found = new ArrayList<>();
            Set<Step.Kind> reached = EnumSet.noneOf(Step.Kind.class);
            followed.sort(Comparator.comparingDouble(f -> f.lever.effort(f.rung)));
            for (Followed one : followed) {
                if (one.chance >= goal.chance() && !reached.contains(one.lever.kind())) {
                    confirmed(List.of(one)).ifPresent(change -> {
                        found.add(change);
                        if (change.reachesGoal()) {
                            reached.add(one.lever.kind());
                        }
                    });
                }
            }
            found.addAll(pairs(followed, found));
            if (found.stream().noneMatch(Change::reachesGoal)) {
                followed.sort(
                        Comparator.comparingDouble((Followed f) -> f.chance).reversed());
                for (Followed one : followed.subList(0, Math.min(2, followed.size()))) {
                    confirmed(List.of(one)).ifPresent(found::add);
                }
            }
            found.sort(Comparator.comparing((Change c) -> !c.reachesGoal()).thenComparingDouble(Change::effort));
            return found.subList(0, Math.min(MOST_CHANGES, found.size()));
        }

        /** The smallest rung of a lever that reaches the goal, else its largest; empty where it does not help. */
        private Optional<Followed> follow(Lever lever) {
            int top = lever.rungs();
            OptionalDouble best = chance(lever, top);
            while (best.isEmpty() && top > 1) {
                top /= 2;
                best = chance(lever, top);
            }
            if (best.isEmpty() || best.getAsDouble() < before + HELPS) {
                return Optional.empty();
            }
            int low = 0;
            int high = top;
            double reached = best.getAsDouble();
            while (reached >= goal.chance() && high - low > 1) {
                int middle = (low + high) / 2;
                double chance = chance(lever, middle).orElse(0);
                if (chance >= goal.chance()) {
                    high = middle;
                    reached = chance;
                } else {
                    low = middle;
                }
            }
            return Optional.of(new Followed(lever, high, reached));
        }

        private OptionalDouble chance(Lever lever, int rung) {
            Optional<Lever.Changed> changed = lever.at(design, rung);
            return changed.isPresent()
                    ? OptionalDouble.of(appraiser.chance(changed.get().design(), SCREENING_DRAWS))
                    : OptionalDouble.empty();
        }

        /** Two levers together that reach the goal with less effort than either alone, the best two of different kinds. */
        private List<Change> pairs(List<Followed> followed, List<Change> singles) {
            double cheapest = singles.stream()
                    .filter(Change::reachesGoal)
                    .mapToDouble(Change::effort)
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            List<Followed> best = new ArrayList<>(followed);
            best.sort(Comparator.comparingDouble((Followed f) -> -(f.chance - before) / f.lever.effort(f.rung)));
            List<List<Followed>> pairs = new ArrayList<>();
            for (int i = 0; i < Math.min(LEVERS_IN_PAIRS, best.size()); i++) {
                for (int j = i + 1; j < Math.min(LEVERS_IN_PAIRS, best.size()); j++) {
                    if (best.get(i).lever.kind() != best.get(j).lever.kind()) {
                        diagonal(best.get(i), best.get(j)).ifPresent(pairs::add);
                    }
                }
            }
            pairs.sort(Comparator.comparingDouble(Search::effort));
            List<Change> changes = new ArrayList<>();
            for (List<Followed> pair : pairs) {
                if (changes.size() < 2 && effort(pair) < cheapest) {
                    confirmed(pair).filter(Change::reachesGoal).ifPresent(changes::add);
                }
            }
            return changes;
        }

        private Optional<List<Followed>> diagonal(Followed one, Followed two) {
            for (int k = 1; k <= DIAGONAL; k++) {
                Followed a = new Followed(one.lever, share(one.rung, k), 0);
                Followed b = new Followed(two.lever, share(two.rung, k), 0);
                Optional<Lever.Changed> both = both(a, b);
                if (both.isPresent() && appraiser.chance(both.get().design(), SCREENING_DRAWS) >= goal.chance()) {
                    return Optional.of(List.of(a, b));
                }
            }
            return Optional.empty();
        }

        private static int share(int rungs, int k) {
            return Math.max(1, (int) Math.round(rungs * k / (double) DIAGONAL));
        }

        private Optional<Lever.Changed> both(Followed a, Followed b) {
            return a.lever.at(design, a.rung).flatMap(first -> b.lever.at(first.design(), b.rung));
        }

        private static double effort(List<Followed> steps) {
            return steps.stream().mapToDouble(f -> f.lever.effort(f.rung)).sum();
        }

        /** The change asked anew with all draws, a little further where it falls short; empty where it breaks a limit. */
        private Optional<Change> confirmed(List<Followed> wanted) {
            List<Followed> steps = new ArrayList<>(wanted);
            Optional<Change> change = asked(steps);
            for (int k = 0; k < FURTHER && change.isPresent() && !change.get().reachesGoal(); k++) {
                Followed first = steps.get(0);
                if (first.rung == first.lever.rungs()) {
                    break;
                }
                steps.set(0, new Followed(first.lever, first.rung + 1, 0));
                Optional<Change> further = asked(steps);
                change = further.isPresent() ? further : change;
            }
            return change.filter(c -> Limits.kept(design, now, c));
        }

        private Optional<Change> asked(List<Followed> followed) {
            Design changed = design;
            List<Step> steps = new ArrayList<>();
            for (Followed one : followed) {
                Optional<Lever.Changed> next = one.lever.at(changed, one.rung);
                if (next.isEmpty()) {
                    return Optional.empty();
                }
                changed = next.get().design();
                steps.add(next.get().step());
            }
            Appraisal appraisal = appraiser.appraise(changed, appraiser.forecast(changed));
            boolean reaches = appraisal.chance() >= goal.chance();
            return Optional.of(new Change(
                    steps, changed, effort(followed), appraisal, reaches, Limits.caution(steps, now, appraisal)));
        }
    }
}
