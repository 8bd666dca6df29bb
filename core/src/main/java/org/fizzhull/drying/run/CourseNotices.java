package org.fizzhull.drying.run;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Notice;

/**
 * What the reader of a drying course must know: cautions first (jars, heat, alcohol), then whether the air dries this
 * mix at all, then what of the mix is unsure. Codes are stable. Stateless.
 */
final class CourseNotices {
    /** Above this fats melt and alcohol is dangerous near a heater, K: 45 C. */
    private static final double HOT = 318.15;

    private CourseNotices() {}

    /** The notices of a course, in the order in which they are told. */
    static List<Notice> of(DryingInput input, ComputedCourse.Ends ends, List<DryingPhase> phases) {
        var list = new ArrayList<Notice>();
        cautions(input, phases, list);
        air(ends, list);
        mix(input, ends, list);
        return List.copyOf(list);
    }

    /** What can hurt someone. */
    private static void cautions(DryingInput input, List<DryingPhase> phases, List<Notice> list) {
        boolean rigid = false;
        boolean hot = false;
        for (DryingPhase phase : phases) {
            rigid |= phase.wrap().rigid();
            hot |= phase.air().temperature() > HOT;
        }
        if (rigid) {
            list.add(JarPressure.CAUTION);
        }
        if (hot) {
            list.add(Notice.caution(
                    "too-hot",
                    "Above 45 C fats melt and damp bicarbonate begins to lose gas; never dry pieces in an oven."));
        }
        if (input.alcohol().share() > 0) {
            list.add(Notice.caution("alcohol-burns", "The alcohol vapour burns: no flame, no heater, open a window."));
        }
    }

    /** Whether the air of the drying phase dries the piece. */
    private static void air(ComputedCourse.Ends ends, List<Notice> list) {
        if (ends.damp()) {
            list.add(Notice.remark(
                    "never-dries",
                    "By the central values its films stay liquid at and above " + Math.round(100 * ends.film())
                            + " % relative humidity: in such air it never dries."));
        } else if (ends.film() - ends.humidity() < 0.1) {
            list.add(new Notice(
                    "near-film-humidity",
                    "The room is within 10 % RH of the air in which this mix never dries; the times are very unsure."));
        }
        if (ends.soaked()) {
            list.add(new Notice("soaked", "It took up water until its pores ran wet; the course ends there."));
        }
    }

    /** What of the mix makes the course unsure. */
    private static void mix(DryingInput input, ComputedCourse.Ends ends, List<Notice> list) {
        if (input.hydrates().gives() > 0 && ends.humidity() < Hydrates.GIVING_HUMIDITY) {
            list.add(new Notice(
                    "hydrate-gives-water",
                    "In air this dry a hydrated salt gives water back over days or weeks, up to "
                            + Math.round(1000 * input.hydrates().gives()) / 10.0
                            + " % of the dry mass; how fast is not known: from none to all of it is counted."));
        }
        if (input.saltActivity() < 1) {
            list.add(Notice.remark(
                    "salts-keep-damp",
                    "Salt, sugar or a second acid keeps the films liquid in drier air; how dry is an estimate, for salt and"
                            + " sugar a lower bound."));
        }
        if (input.capacity() > 0 && input.freeWater() > 0) {
            list.add(Notice.remark(
                    "reaction-unsure",
                    "No published rate of the reaction before the bath was found: fizz lost is a wide guess."));
        }
    }
}
