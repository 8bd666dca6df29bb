package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.drying.run.RoomText;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;

/** The options of what happens between press and bath: air, time, standing, wrap, storage, room. */
public final class DryingOptions {
    public static final String AIR = "--air";
    static final String DRY_FOR = "--dry-for";
    private static final String ON = "--on";
    static final String FAN = "--fan";
    private static final String WRAP_AFTER = "--wrap-after";
    private static final String WRAP = "--wrap";
    private static final String STORED = "--stored";
    private static final String STORED_AIR = "--stored-air";
    public static final String ROOM = "--room";
    public static final String PIECES = "--pieces";
    private static final String[] ALL = {AIR, DRY_FOR, ON, FAN, WRAP_AFTER, WRAP, STORED, STORED_AIR, ROOM, PIECES};

    /** Time from press to bath where none is given, s: three days [common practice, no source]. */
    public static final double USUAL_DAYS = 3 * 86400.0;

    /** A minute and a half to ten years. */
    private static final Allowed TIME = Allowed.between(1e-3, 3650, Unit.DAY);

    private static final int MOST_PIECES = 100_000;

    private static final Notice DAMP =
            new Notice("not-dried", "Taken into the bath damp from the mould; for drying add --air, --dry-for.");

    private DryingOptions() {}

    public static void add(Options spec) {
        CommonOptions.value(
                spec, AIR, "AIR", "air of the room: 21 C, 55 %, or outside 8 C, 85 %, heated to 21 C (21 C, 50 %)");
        CommonOptions.value(spec, DRY_FOR, "TIME", "from press to bath or storage, such as 36 h or 3 d");
        CommonOptions.value(spec, ON, "WHAT", "what they dry on: rack (default), tray, cloth, mould");
        CommonOptions.flag(spec, FAN, "a gentle fan blows on them");
        CommonOptions.value(spec, WRAP_AFTER, "TIME", "wrapped so long after pressing");
        CommonOptions.value(spec, WRAP, "NAME", "wrapped in: " + wrapNames() + " (shrink film)");
        CommonOptions.value(spec, STORED, "TIME", "put away so long before the bath, such as 60 d");
        CommonOptions.value(spec, STORED_AIR, "AIR", "air where they are stored (that of the room)");
        CommonOptions.value(
                spec, ROOM, "ROOM", "closed room that they make damp: 25 m3, 0.5 changes/h, dehumidifier 300 g/d");
        CommonOptions.value(spec, PIECES, "N", "how many pieces dry in that room");
    }

    /** Whether any of these options was given. */
    public static boolean given(Arguments arguments) {
        for (String name : ALL) {
            if (arguments.has(name)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it was said how long they lie open. */
    public static boolean timed(Arguments arguments) {
        return arguments.has(DRY_FOR) || arguments.has(WRAP_AFTER);
    }

    /** The plan for a shape, with what was taken for granted as its notices; without any option, none. */
    static DryingPlan plan(Arguments arguments, Shape shape) {
        if (!given(arguments)) {
            return DryingPlan.none().noting(List.of(DAMP));
        }
        List<Notice> notices = new ArrayList<>();
        return read(arguments, USUAL_DAYS, notices).plan(shape).noting(notices);
    }

    /** Refuses what cannot be read, where there is no piece to dry. */
    public static void check(Arguments arguments, Shape shape) {
        read(arguments, USUAL_DAYS, new ArrayList<>()).plan(shape);
    }

    /**
     * How the pieces are dried and put away.
     *
     * @param usual time until bath or storage where none is given, s
     * @param notices takes what was taken for granted
     */
    public static DryingConditions read(Arguments arguments, double usual, List<Notice> notices) {
        RoomAir air = air(arguments)
                .orElseGet(() -> taken(notices, "usual-air", "No --air given: 21 C and 50 % humidity are taken."));
        Standing standing = arguments.value(ON, DryingOptions::standing).orElse(Standing.RACK);
        Optional<Double> dryFor = arguments.value(DRY_FOR, TIME::parseExact);
        Optional<Double> wrapAfter = arguments.value(WRAP_AFTER, TIME::parseExact);
        Optional<Double> stored = arguments.value(STORED, TIME::parseExact);
        Wrap wrap = arguments.value(WRAP, DryingOptions::wrap).orElseGet(() -> usualWrap(wrapAfter, notices));
        checkWrap(arguments, wrap, dryFor, wrapAfter, stored);
        double open;
        if (wrapAfter.isPresent()) {
            open = wrapAfter.get();
        } else if (dryFor.isPresent()) {
            open = dryFor.get();
        } else {
            open = usual;
            notices.add(new Notice("usual-time", "No " + DRY_FOR + " given: " + days(usual) + " are taken."));
        }
        return new DryingConditions(
                air,
                room(arguments),
                standing,
                arguments.has(FAN),
                open,
                wrap,
                wrapAfter.isPresent() ? inWrap(open, dryFor, stored, notices) : 0,
                storage(arguments, stored, air, notices));
    }

    /** The air of the room, if it was given. */
    static Optional<RoomAir> air(Arguments arguments) {
        return arguments.value(AIR, RoomAir::parse);
    }

    /** Time in the wrap before the bath or the storage. */
    private static double inWrap(double open, Optional<Double> dryFor, Optional<Double> stored, List<Notice> notices) {
        if (dryFor.isPresent()) {
            return dryFor.get() - open;
        }
        if (stored.isPresent()) {
            return 0;
        }
        notices.add(new Notice(
                "usual-time",
                "No " + DRY_FOR + " given: " + days(USUAL_DAYS) + " in the wrap before the bath are taken."));
        return USUAL_DAYS;
    }

    private static RoomAir taken(List<Notice> notices, String code, String text) {
        notices.add(new Notice(code, text));
        return RoomAir.of(Units.celsius(21), 0.50);
    }

    private static Standing standing(String option, String word) {
        return Standing.named(word.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new Refusal(
                        "unknown-word",
                        option,
                        word,
                        "rack, tray, cloth or mould",
                        "Write one of these; without it they lie on a rack."));
    }

    private static Wrap wrap(String option, String name) {
        return Wrap.named(name.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new Refusal(
                        "unknown-word",
                        option,
                        name,
                        wrapNames(),
                        "Take the one that is most like yours; paper hardly holds water back: leave " + WRAP
                                + " out for it."));
    }

    private static Wrap usualWrap(Optional<Double> after, List<Notice> notices) {
        if (after.isEmpty()) {
            return Wrap.NONE;
        }
        notices.add(new Notice("usual-wrap", "No " + WRAP + " given: shrink film is taken."));
        return Wrap.named("shrink film").orElseThrow();
    }

    private static void checkWrap(
            Arguments arguments, Wrap wrap, Optional<Double> dryFor, Optional<Double> after, Optional<Double> stored) {
        if (after.isPresent() && !wrap.present()) {
            throw arguments.refusal(
                    "conflict", WRAP_AFTER, "a wrap other than none", "Name the wrap, or leave out the time.");
        }
        if (wrap.present() && after.isEmpty() && stored.isEmpty()) {
            throw new Refusal(
                    "missing-option",
                    WRAP_AFTER,
                    "",
                    "when the pieces are wrapped, such as " + WRAP_AFTER + " 2 d",
                    "A wrap without a time belongs to " + STORED + " only: then they are wrapped when put away.");
        }
        if (after.isPresent() && dryFor.isPresent() && !(after.get() <= dryFor.get())) {
            throw arguments.refusal(
                    "conflict",
                    WRAP_AFTER,
                    "at most the time of " + DRY_FOR + ", "
                            + arguments.text(DRY_FOR).orElse(""),
                    "Both count from pressing.");
        }
    }

    private static Optional<DryingPhase.ClosedRoom> room(Arguments arguments) {
        boolean told = arguments.has(ROOM);
        if (told != arguments.has(PIECES)) {
            throw new Refusal(
                    "missing-option",
                    told ? PIECES : ROOM,
                    "",
                    told ? "the number of pieces in the room" : "a room, such as " + ROOM + " \"25 m3\"",
                    ROOM + " and " + PIECES + " go together.");
        }
        int pieces = (int) arguments.whole(PIECES, 1, 1, MOST_PIECES);
        return arguments.value(ROOM, (option, text) -> RoomText.parse(option, text, pieces));
    }

    private static Optional<DryingConditions.Storage> storage(
            Arguments arguments, Optional<Double> stored, RoomAir air, List<Notice> notices) {
        if (stored.isEmpty()) {
            if (arguments.has(STORED_AIR)) {
                throw new Refusal(
                        "missing-option", STORED, "", "a time, such as " + STORED + " 60 d", "Say how long, too.");
            }
            return Optional.empty();
        }
        Optional<RoomAir> told = arguments.value(STORED_AIR, RoomAir::parse);
        if (told.isEmpty()) {
            notices.add(new Notice("usual-storage", "No " + STORED_AIR + " given: they are stored in the room's air."));
        }
        return Optional.of(new DryingConditions.Storage(stored.get(), told.orElse(air)));
    }

    private static String days(double seconds) {
        return NumberText.whole(seconds / 86400) + " days";
    }

    private static String wrapNames() {
        StringBuilder names = new StringBuilder();
        for (Wrap wrap : Wrap.named()) {
            if (wrap.present()) {
                names.append(names.length() > 0 ? ", " : "").append(wrap.name());
            }
        }
        return names.toString();
    }

    /** The predictor for pieces that dry in the air that was told, if any was. */
    public static PressPredictor inAir(Arguments arguments, PressPredictor predictor) {
        Optional<RoomAir> air = air(arguments);
        return air.isPresent() ? predictor.dryingIn(air.get()) : predictor;
    }
}
