package org.fizzhull.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.voyage.Voyage;
import org.fizzhull.voyage.VoyageEvent;
import org.fizzhull.voyage.VoyageEvent.Kind;

/** The way of a piece in the middle case as one sentence: going under and coming up in turns is said once, as bobbing. */
final class WayText {
    private WayText() {}

    static String of(Voyage voyage) {
        List<String> said = new ArrayList<>();
        List<VoyageEvent> events = voyage.events();
        int i = 0;
        while (i < events.size()) {
            int end = bobbing(events, i);
            if (end > i) {
                VoyageEvent last = events.get(end - 1);
                boolean still = end < events.size() && events.get(end).kind() == Kind.SETTLES;
                double until = still ? events.get(end).time() : last.time();
                said.add((i == 0 ? "bobs at first" : "bobs") + (still ? " and lies still at the surface" : "")
                        + " after " + FateText.duration(until));
                i = still ? end + 1 : end;
            } else {
                VoyageEvent event = events.get(i);
                said.add(event.kind().words() + " after " + FateText.duration(event.time()));
                i++;
            }
        }
        return String.join(", ", said) + " (middle case)";
    }

    /** Behind the last of the events from here on that only go under and come up again; here itself where there are none. */
    private static int bobbing(List<VoyageEvent> events, int from) {
        int end = from;
        while (end + 1 < events.size()
                && events.get(end).kind() == Kind.SINKS
                && events.get(end + 1).kind() == Kind.SURFACES) {
            end += 2;
        }
        return end;
    }
}
