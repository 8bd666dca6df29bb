package org.fizzhull.decide.advise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.fizzhull.decide.Design;
import org.fizzhull.quantity.Refusal;

/**
 * The search for the smallest changes of one design.
 *
 * <p>A adjustment helps the more the higher its level, so that the smallest level that reaches the goal is found by halving; where it
 * does not, the level found is one that reaches the goal but perhaps not the smallest. The search asks with few draws; each
 * proposal is asked anew with all of them and goes a level further where that falls short. Two adjustments are tried together along
 * the diagonal of their levels, which finds a pair near the least effort and not the least of all. Used once, by one thread.
 */
final class ChangeSearch {
    /** Draws of the search; a chance of 0.9 is known to some 0.02 from them. */
    private static final int SCREENING_DRAWS = 256;

    /** A adjustment that adds less than this to the chance does not help. */
    private static final double HELPS = 0.01;

    /** Rungs that a proposal may go beyond what the few draws said. */
    private static final int FURTHER = 3;

    /** Levers that are tried by two: those that gain most for their effort. */
    private static final int LEVERS_IN_PAIRS = 4;
    /** Proposals at most. */
    private static final int MOST_CHANGES = 6;
    /** Points on the diagonal of a pair. */
    private static final int DIAGONAL = 8;
    /** Changes that break a limit, told at most. */
    private static final int MOST_FORGONE = 2;

    /**
     * A adjustment and the level it was followed to.
     *
     * @param adjustment what is changed
     * @param level level, from 1
     * @param chance chance there, from few draws; 0 where it was not asked
     */
    private record Followed(Adjustment adjustment, int level, double chance) {}

    /** A design with the steps that led to it. */
    private record Combined(Design design, List<Change.Step> steps) {}

    private final Appraiser appraiser;
    private final Design design;
    private final Adviser.Goal goal;
    /** How the design does as it is, all draws. */
    private final Advice.Appraisal now;
    /** Chance of the design as it is, from the draws of the search. */
    private final double before;
    /** What was asked with all draws: an adjustment is met again where nothing reaches the goal. */
    private final Map<List<Followed>, Optional<Change>> asked = new HashMap<>();

    /** Changes that reach the goal but break a limit, as they were met. */
    private final List<Advice.Forgone> forgone = new ArrayList<>();

    /** For one design; asks for its chance with the draws of the search. */
    ChangeSearch(Appraiser appraiser, Design design, Adviser.Goal goal, Advice.Appraisal now) {
        this.appraiser = appraiser;
        this.design = design;
        this.goal = goal;
        this.now = now;
        this.before = appraiser.chance(design, SCREENING_DRAWS);
    }

    /**
     * {@return proposals, those that reach the goal first, each smallest first; at most six}
     *
     * @param adjustments what may be changed
     */
    List<Change> changes(List<Adjustment> adjustments) {
        List<Followed> followed = new ArrayList<>();
        for (Adjustment adjustment : adjustments) {
            follow(adjustment).ifPresent(followed::add);
        }
        // one adjustment alone, the least effort first, one proposal for each kind of step
        List<Change> found = new ArrayList<>();
        Set<Change.Step.Kind> reached = EnumSet.noneOf(Change.Step.Kind.class);
        followed.sort(Comparator.comparingDouble(f -> f.adjustment.effort(f.level)));
        for (Followed one : followed) {
            if (one.chance >= goal.chance() && !reached.contains(one.adjustment.kind())) {
                confirmed(List.of(one)).ifPresent(change -> {
                    found.add(change);
                    if (change.reachesGoal()) {
                        reached.add(one.adjustment.kind());
                    }
                });
            }
        }
        found.addAll(pairs(followed, found));
        // nothing reaches the goal: the two that help most
        if (found.stream().noneMatch(Change::reachesGoal)) {
            followed.sort(Comparator.comparingDouble((Followed f) -> f.chance).reversed());
            for (Followed one : followed.subList(0, Math.min(2, followed.size()))) {
                confirmed(List.of(one))
                        .filter(change -> !found.contains(change))
                        .ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparing((Change c) -> !c.reachesGoal()).thenComparingDouble(Change::effort));
        return found.subList(0, Math.min(MOST_CHANGES, found.size()));
    }

    /** {@return what would reach the goal but breaks a limit, at most two} */
    List<Advice.Forgone> forgone() {
        return List.copyOf(forgone);
    }

    /** The smallest level of an adjustment that reaches the goal, else its largest; empty where it does not help. */
    private Optional<Followed> follow(Adjustment adjustment) {
        // the chance at the largest level that can be taken
        int top = adjustment.levels();
        OptionalDouble best = chance(adjustment, top);
        // the largest level that can be taken, by halving from the top
        while (best.isEmpty() && top > 1) {
            top /= 2;
            best = chance(adjustment, top);
        }
        if (best.isEmpty() || best.getAsDouble() < before + HELPS) {
            return Optional.empty();
        }
        // halving between a level that falls short (0: none taken) and one that reaches the goal
        int low = 0;
        int high = top;
        double reached = best.getAsDouble();
        while (reached >= goal.chance() && high - low > 1) {
            int middle = (low + high) / 2;
            double chance = chance(adjustment, middle).orElse(0);
            if (chance >= goal.chance()) {
                high = middle;
                reached = chance;
            } else {
                low = middle;
            }
        }
        return Optional.of(new Followed(adjustment, high, reached));
    }

    /** Chance at a level, from the draws of the search; empty where the level cannot be taken. */
    private OptionalDouble chance(Adjustment adjustment, int level) {
        return chance(List.of(new Followed(adjustment, level, 0)));
    }

    /** Chance with levels taken, from the draws of the search; empty where they cannot be taken together. */
    private OptionalDouble chance(List<Followed> levels) {
        Optional<Double> chance = made(() -> appraiser.chance(changed(levels).design(), SCREENING_DRAWS));
        return chance.isPresent() ? OptionalDouble.of(chance.get()) : OptionalDouble.empty();
    }

    /** What was asked of a changed design; empty for a piece that cannot be as asked: such a change is no proposal. */
    private static <T> Optional<T> made(Supplier<T> asked) {
        try {
            return Optional.of(asked.get());
        } catch (Refusal refused) {
            // such as a piece lighter than its fills scatter, or a fill that another mould cannot hold
            return Optional.empty();
        }
    }

    /** The design with levels taken one after the other, and the steps; empty where one of them cannot be taken. */
    private Combined changed(List<Followed> levels) {
        Design changed = design;
        List<Change.Step> steps = new ArrayList<>();
        for (Followed one : levels) {
            Adjustment.Changed next = one.adjustment.at(changed, one.level);
            changed = next.design();
            steps.add(next.step());
        }
        return new Combined(changed, steps);
    }

    /** Two adjustments together that reach the goal with less effort than either alone, the best two of different kinds. */
    private List<Change> pairs(List<Followed> followed, List<Change> singles) {
        // a pair must take less effort than the cheapest single change that reaches the goal
        double cheapest = singles.stream()
                .filter(Change::reachesGoal)
                .mapToDouble(Change::effort)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        // the adjustments that gain most for their effort, two by two
        List<Followed> best = new ArrayList<>(followed);
        best.sort(Comparator.comparingDouble((Followed f) -> -(f.chance - before) / f.adjustment.effort(f.level)));
        List<List<Followed>> pairs = new ArrayList<>();
        for (int i = 0; i < Math.min(LEVERS_IN_PAIRS, best.size()); i++) {
            for (int j = i + 1; j < Math.min(LEVERS_IN_PAIRS, best.size()); j++) {
                if (best.get(i).adjustment.kind() != best.get(j).adjustment.kind()) {
                    diagonal(best.get(i), best.get(j)).ifPresent(pairs::add);
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(ChangeSearch::effort));
        List<Change> changes = new ArrayList<>();
        Set<Set<Change.Step.Kind>> kinds = new HashSet<>();
        for (List<Followed> pair : pairs) {
            Set<Change.Step.Kind> both = EnumSet.of(
                    pair.get(0).adjustment.kind(), pair.get(1).adjustment.kind());
            if (changes.size() < 2 && effort(pair) < cheapest && kinds.add(both)) {
                confirmed(pair).filter(Change::reachesGoal).ifPresent(changes::add);
            }
        }
        return changes;
    }

    /** The first point of the diagonal at which two adjustments reach the goal; empty where none does. */
    private Optional<List<Followed>> diagonal(Followed one, Followed two) {
        for (int k = 1; k <= DIAGONAL; k++) {
            Followed a = new Followed(one.adjustment, share(one.level, k), 0);
            Followed b = new Followed(two.adjustment, share(two.level, k), 0);
            List<Followed> both = List.of(a, b);
            if (chance(both).orElse(0) >= goal.chance()) {
                return Optional.of(both);
            }
        }
        return Optional.empty();
    }

    /** Rung at k eighths of the way, 1 at least. */
    private static int share(int levels, int k) {
        return Math.max(1, (int) Math.round(levels * k / (double) DIAGONAL));
    }

    /** Effort of all steps together. */
    private static double effort(List<Followed> steps) {
        return steps.stream().mapToDouble(f -> f.adjustment.effort(f.level)).sum();
    }

    /** The change asked anew with all draws, once; empty where it breaks a limit. */
    private Optional<Change> confirmed(List<Followed> wanted) {
        Optional<Change> known = asked.get(wanted);
        if (known == null) {
            known = confirm(wanted);
            asked.put(wanted, known);
        }
        return known;
    }

    /** Asks with all draws, a little further where the change falls short; keeps what breaks a limit apart. */
    private Optional<Change> confirm(List<Followed> wanted) {
        List<Followed> steps = new ArrayList<>(wanted);
        Optional<Change> change = asked(steps);
        // the few draws of the search may have been too hopeful: go on by the first adjustment
        for (int k = 0; k < FURTHER && change.isPresent() && !change.get().reachesGoal(); k++) {
            Followed first = steps.get(0);
            if (first.level == first.adjustment.levels()) {
                break;
            }
            steps.set(0, new Followed(first.adjustment, first.level + 1, 0));
            Optional<Change> further = asked(steps);
            change = further.isPresent() ? further : change;
        }
        // limits are checked last, since they need the appraisal from all draws
        Optional<Advice.Limit> broken = change.flatMap(c -> Limits.broken(design, now, c));
        if (broken.isPresent() && change.get().reachesGoal() && forgone.size() < MOST_FORGONE) {
            forgone.add(new Advice.Forgone(change.get(), broken.get()));
        }
        return broken.isPresent() ? Optional.empty() : change;
    }

    /** The change with its appraisal from all draws; empty where its levels cannot be taken together. */
    private Optional<Change> asked(List<Followed> followed) {
        return made(() -> {
            Combined changed = changed(followed);
            Advice.Appraisal appraisal = appraiser.appraise(changed.design());
            return new Change(
                    changed.steps(),
                    changed.design(),
                    effort(followed),
                    appraisal,
                    appraisal.chance() >= goal.chance(),
                    Limits.caution(changed.steps(), changed.design(), now, appraisal));
        });
    }
}
