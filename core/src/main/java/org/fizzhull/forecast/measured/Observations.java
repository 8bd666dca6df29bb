package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.SerialForm;
import org.fizzhull.shape.Shape;

/**
 * What a person has measured on pieces of the same mix, in the same bath: a forecast that knows it is narrower.
 *
 * <pre>{@code
 * Observations seen = Observations.none()
 *         .fizzed(TimedPiece.fizzed(150))                         // s, of the piece that is asked about
 *         .rose(TimedPiece.rose(95).weighing(Units.grams(150)));  // s, of a heavier one that sank first
 * Forecast forecast = FloatPredictor.standard().with(seen).forecast(question);
 * }</pre>
 *
 * <p>Of each kind there may be several; the first is met exactly in every draw, the others weight the draws
 * (docs/physics/uncertainty.md, 4). Which measurement would tell most says {@link org.fizzhull.forecast.Forecast#next}.
 * Immutable; each method returns a changed copy.
 *
 * @param fizz times until a piece was gone
 * @param rise times until a piece that had sunk came up
 * @param weighed pressed pieces on the scale, the first with the others behind it
 * @param lift readings of pieces held wholly under in a bowl on a scale
 * @param results what pieces did when they were let go
 * @param dried drying logs of pieces of the mix
 */
public record Observations(
        List<TimedPiece> fizz,
        List<TimedPiece> rise,
        Optional<WeighedPiece> weighed,
        List<HeldPiece> lift,
        List<DroppedPiece> results,
        List<LoggedPieces> dried)
        implements Serializable {
    private static final Observations NONE =
            new Observations(List.of(), List.of(), Optional.empty(), List.of(), List.of(), List.of());

    /**
     * Refuses a piece that came up after it was gone.
     *
     * @param fizz times until a piece was gone
     * @param rise times until a piece that had sunk came up
     * @param weighed pressed pieces on the scale, the first with the others behind it
     * @param lift readings of pieces held wholly under in a bowl on a scale
     * @param results what pieces did when they were let go
     * @param dried drying logs of pieces of the mix
     * @throws Refusal {@code conflict}
     */
    public Observations {
        Given.all("fizz, rise, weighed, lift, results, dried", fizz, rise, weighed, lift, results, dried);
        fizz = List.copyOf(fizz);
        rise = List.copyOf(rise);
        lift = List.copyOf(lift);
        results = List.copyOf(results);
        dried = List.copyOf(dried);
        // of several pieces of one weight nobody knows which time is whose
        if (fizz.size() == 1
                && rise.size() == 1
                && fizz.get(0).mass().equals(rise.get(0).mass())) {
            double gone = fizz.get(0).time();
            double up = rise.get(0).time();
            if (!(up < gone)) {
                throw new Refusal(
                        "conflict",
                        "measured rise",
                        up + " s, and gone after " + gone + " s",
                        "a rise before the piece is gone",
                        "Both times run from the drop; say at which weight where they are of two pieces.");
            }
        }
    }

    /** {@return observations of nothing} */
    public static Observations none() {
        return NONE;
    }

    /**
     * {@return these observations and a fizz time}
     *
     * @param piece what was measured of one piece
     */
    public Observations fizzed(TimedPiece piece) {
        Given.all("piece", piece);
        return new Observations(and(fizz, piece), rise, weighed, lift, results, dried);
    }

    /**
     * {@return these observations and a rise time}
     *
     * @param piece what was measured of one piece
     */
    public Observations rose(TimedPiece piece) {
        Given.all("piece", piece);
        return new Observations(fizz, and(rise, piece), weighed, lift, results, dried);
    }

    /**
     * {@return these observations and a weighed piece, with those behind it}
     *
     * @param piece the piece that was weighed next
     */
    public Observations weighed(WeighedPiece piece) {
        Given.all("piece", piece);
        WeighedPiece all = weighed.map(first -> first.and(piece)).orElse(piece);
        return new Observations(fizz, rise, Optional.of(all), lift, results, dried);
    }

    /**
     * {@return these observations and a reading of a piece held under}
     *
     * @param piece what was measured of one piece
     */
    public Observations held(HeldPiece piece) {
        Given.all("piece", piece);
        return new Observations(fizz, rise, weighed, and(lift, piece), results, dried);
    }

    /**
     * {@return these observations and what a piece did when it was let go}
     *
     * @param piece what was seen of one piece
     */
    public Observations dropped(DroppedPiece piece) {
        return new Observations(fizz, rise, weighed, lift, and(results, piece), dried);
    }

    /**
     * {@return these observations and a drying log}
     *
     * @param pieces weighings of pieces of the mix while they dried
     */
    public Observations dried(LoggedPieces pieces) {
        return new Observations(fizz, rise, weighed, lift, results, and(dried, pieces));
    }

    /** {@return these observations, each weighed piece that names no mould being of this one} */
    public Observations weighedIn(Shape mould) {
        Given.all("mould", mould);
        List<WeighedPiece> pieces = new ArrayList<>();
        // alone: the first holds the further ones, which come on their own
        eachWeighed(piece -> pieces.add((piece.shape().isPresent() ? piece : piece.in(mould)).and(List.of())));
        Optional<WeighedPiece> all = pieces.stream().reduce(WeighedPiece::and);
        return new Observations(fizz, rise, all, lift, results, dried);
    }

    /** {@return whether nothing was measured} */
    public boolean isEmpty() {
        return weighed.isEmpty() && dried.isEmpty() && !bathed();
    }

    /** {@return whether something was measured in the bath} */
    public boolean bathed() {
        return !(fizz.isEmpty() && rise.isEmpty() && lift.isEmpty() && results.isEmpty());
    }

    /** Those behind the first. */
    public static <T> List<T> behind(List<T> pieces) {
        return pieces.isEmpty() ? pieces : pieces.subList(1, pieces.size());
    }

    /** The first of several. */
    public static <T> Optional<T> first(List<T> pieces) {
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(0));
    }

    /** The pieces with one more at the end. */
    private static <T> List<T> and(List<T> pieces, T piece) {
        List<T> all = new ArrayList<>(pieces);
        all.add(piece);
        return all;
    }

    /**
     * Looks at each weighed piece, in order.
     *
     * @param look takes each of them
     */
    public void eachWeighed(Consumer<WeighedPiece> look) {
        Given.all("look", look);
        weighed.ifPresent(first -> {
            look.accept(first);
            first.others().forEach(look);
        });
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
