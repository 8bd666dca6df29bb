package org.fizzhull.cli.fizzing;

import java.util.List;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.voyage.result.Voyage;
import org.fizzhull.voyage.result.Voyage.Event.Kind;

/** The way of a piece in one sentence: going under and coming up in turns is said once, as bobbing. */
public final class VoyageText {
    /** What happens sooner than this happens at once, s. */
    private static final double AT_ONCE = 1.5;

    private final List<Voyage.Event> events;
    private final StringBuilder said = new StringBuilder();
    private int next;

    private VoyageText(List<Voyage.Event> events) {
        this.events = events;
    }

    /** It ..., such as {@code bobs for 8 s, then floats, is gone after 5.7 min}. */
    public static String of(Voyage voyage) {
        VoyageText way = new VoyageText(voyage.events());
        while (way.next < way.events.size()) {
            way.say();
        }
        return way.said.toString();
    }

    private void say() {
        Voyage.Event event = events.get(next);
        boolean first = next == 0;
        next++;
        if (event.kind() == Kind.SINKS && follows(Kind.SURFACES)) {
            double until = bobbing(event.time());
            say(first ? "bobs for " + OutcomeText.duration(until) : "bobs until " + OutcomeText.duration(until));
            say(settles() ? "then floats" : "");
        } else if (event.kind() == Kind.SINKS && follows(Kind.BOTTOM)) {
            say("sinks to the bottom " + when(events.get(next).time()));
            next++;
        } else if (event.kind() == Kind.LIFT_OFF && follows(Kind.SURFACES)) {
            say("");
        } else if (event.kind() == Kind.SURFACES) {
            bobbing(event.time());
            say("comes up " + when(event.time()) + (settles() ? " and floats" : ""));
        } else if (event.kind() == Kind.SWAMPS || event.kind() == Kind.PIERCED) {
            say(first && event.time() > 0 ? "floats like a boat" : "");
            say(event.kind().words() + ' ' + when(event.time()));
            bobbing(event.time());
            said.append(settles() ? " and floats on" : "");
        } else if (event.kind() == Kind.SETTLES) {
            say("floats " + when(event.time()));
        } else {
            say(event.kind().words() + ' ' + when(event.time()));
        }
    }

    private void say(String words) {
        said.append(said.isEmpty() || words.isEmpty() ? "" : ", ").append(words);
    }

    private boolean follows(Kind kind) {
        return next < events.size() && events.get(next).kind() == kind;
    }

    /** Passes over events that only go under and come up in turns; until when they do, s. */
    private double bobbing(double from) {
        double until = from;
        while (next < events.size()
                && (follows(Kind.SURFACES)
                        || (follows(Kind.SINKS)
                                && next + 1 < events.size()
                                && events.get(next + 1).kind() == Kind.SURFACES))) {
            until = events.get(next).time();
            next++;
        }
        return follows(Kind.SETTLES) ? events.get(next).time() : until;
    }

    private boolean settles() {
        boolean settles = follows(Kind.SETTLES);
        next += settles ? 1 : 0;
        return settles;
    }

    private static String when(double time) {
        return time < AT_ONCE ? "at once" : "after " + OutcomeText.duration(time);
    }
}
