package org.fizzhull.shape.revolved;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.body.MeshHollow;
import org.fizzhull.shape.size.FileName;
import org.fizzhull.shape.size.SizeCheck;
import org.jspecify.annotations.Nullable;

/**
 * A body of revolution from a measured outline. Volume, surface, centroid and hull are exact for the outline; the depth
 * profiles are measured on it when it is made, to 0.1 %. A hollow around the axis that is open at the top makes it a
 * boat, as a bowl is, where it holds at least a tenth of the closed hull; a shallower one is a dimple that fills (the
 * limit is assumed). No other hollow is looked for.
 *
 * <p>Made by {@link #of} from the profile that {@link ProfilePoints} checked. Range: 5 mm to 1 m, at least 0.9 mm thick
 * on average and thick enough for its size and number of lines to be measured within seconds. Cost: some hundredths of
 * a second to some seconds when it is made; afterwards none. Immutable, safe for use by several threads.
 */
public final class RevolvedShape implements Shape {
    private static final long serialVersionUID = 1;

    /** Share of the closed hull from which a hollow makes a boat (assumed). */
    private static final double BOAT = 0.1;

    /** Share below which a hollow is not worth a notice (assumed). */
    private static final double DIMPLE = 0.01;

    /** Nothing thinner leaves a mould, m. */
    private static final double THINNEST = 0.9e-3;

    /** Lines up to so many cost as much as this number. */
    private static final double FEW_LINES = 50;

    /** Section over thickness squared, times lines, that is measured within seconds. */
    private static final double MOST_WORK = 2e5;

    /** Length of the outline over thickness, times lines, likewise. */
    private static final double MOST_ALONG = 5e5;

    /** Cosine of the lean of an axis that stands upright: rounding of the search for the nearest plane. */
    private static final double UPRIGHT = 1 - 1e-9;

    /** Name of the outline's file, for shape text only. */
    private final String file;
    /** Faces of the outline as edges. */
    private final Meridian meridian;
    /** The outline. */
    private final Profile2D profile;
    /** Volume of the material, m3. */
    private final double volume;
    /** What is left at each depth from every face. */
    private final DepthProfile all;
    /** What is left from every face but the one it rests on. */
    private final DepthProfile tray;
    /** How it lies when it was not placed by hand. */
    private final RestingAttitude rest;
    /** What is left afloat with a flat face up; empty where it keeps none up. */
    private final Optional<DepthProfile> afloat;
    /** What is left from the outside of a boat; the same as {@code all} for any other body. */
    private final DepthProfile outside;
    /** The hollow that makes it a boat. */
    private final Optional<Hollow> hollow;
    /** That a dimple is left out, where there is one. */
    private final List<Notice> notices;

    /** Measures the depth profiles, which costs most, and looks for a hollow. */
    private RevolvedShape(String file, Profile2D profile, Meridian meridian) {
        this.file = file;
        this.profile = profile;
        this.meridian = meridian;
        this.volume = profile.volume();
        this.all = MeridianDepth.of(meridian, volume, false);
        this.tray = meridian.rests() ? MeridianDepth.of(meridian, volume, true) : all;
        MeridianHollow found = MeridianHollow.of(meridian, volume);
        if (found != null && found.share() >= BOAT) {
            this.hollow = Optional.of(found.hollow());
            this.outside = found.outside(meridian, volume);
            this.notices = List.of();
        } else {
            this.hollow = Optional.empty();
            this.outside = all;
            this.notices =
                    found != null && found.share() >= DIMPLE ? List.of(MeshHollow.dimple(found.share())) : List.of();
        }
        this.rest = RestingAttitude.of(new RevolvedHull(profile), planArea());
        this.afloat = hollow.isPresent() ? Optional.empty() : afloat();
    }

    /** What is left with the flat base or top that it keeps up afloat shut, if it keeps one up. */
    private Optional<DepthProfile> afloat() {
        double up = rest.nearest().z();
        if (Math.abs(up) < UPRIGHT) {
            return Optional.empty();
        }
        double height = meridian.height();
        boolean[] flat = up < 0
                ? meridian.between(0, RestingAttitude.LEVEL * height)
                : meridian.between((1 - RestingAttitude.LEVEL) * height, height);
        Meridian open = meridian.shutting(flat);
        double dry = meridian.area(false) - open.area(true);
        if (!rest.keepsUp(dry)) {
            return Optional.empty();
        }
        boolean base = up < 0 && dry == meridian.area(false) - meridian.area(true);
        return Optional.of(base ? tray : MeridianDepth.withWalls(open, volume));
    }

    /**
     * {@return the body of an outline with its lowest point at height 0, as {@link ProfilePoints} makes it} Takes some
     * hundredths of a second for a compact body, a few seconds for the thinnest.
     *
     * @param file name of the outline's file as it shall stand in shape text; the file itself is not opened
     * @param profile the outline, lowest point at height 0, m
     * @throws Refusal {@code out-of-range} for a size beyond 5 mm to 1000 mm, {@code too-thin} for a body too thin for
     *     its size, {@code bad-file-name} for a name that shape text cannot carry
     */
    public static RevolvedShape of(String file, Profile2D profile) {
        Meridian meridian = Meridian.of(profile);
        SizeCheck.size("file", Math.max(2 * meridian.widest(), meridian.height()));
        refuseThin(meridian, profile.volume());
        return new RevolvedShape(FileName.checked(file), profile, meridian);
    }

    /**
     * Refuses a body whose measurement would take too long. The depths are measured on a lattice of squares that go
     * with the thickness, finer along the outline, and at each corner to every line: the time goes with the section
     * over the thickness squared, with the length of the outline over the thickness, and with the number of lines.
     */
    private static void refuseThin(Meridian meridian, double volume) {
        double mean = 2 * volume / meridian.area(false);
        if (!(mean >= THINNEST)) {
            throw tooThin(
                    "a body " + QuantityText.rounded(mean, Unit.MILLIMETRE, 3) + " thick on average", THINNEST, "");
        }
        double thick = 2 * meridian.deepest(false);
        double lines = meridian.count();
        // length of the outline
        double length = 0;
        for (int i = 0; i < lines; i++) {
            length += Math.hypot(meridian.r1(i) - meridian.r0(i), meridian.z1(i) - meridian.z0(i));
        }
        // the thickness at which the work, by area and by length, is just within the limits
        double squares = Math.sqrt(meridian.widest() * meridian.height() * Math.max(FEW_LINES, lines) / MOST_WORK);
        double least = Math.max(THINNEST, Math.max(squares, lines * length / MOST_ALONG));
        if (!(thick >= least)) {
            String read = "a body at most " + QuantityText.rounded(thick, Unit.MILLIMETRE, 3) + " thick";
            throw tooThin(read, least, " for its size and its " + meridian.count() + " lines");
        }
    }

    /** A refusal of what was read, with the least thickness allowed, m, and why. */
    private static Refusal tooThin(String read, double least, String why) {
        return new Refusal(
                "too-thin",
                SizeCheck.field("file"),
                read,
                "at least " + QuantityText.rounded(least, Unit.MILLIMETRE, 3) + why,
                "Check the unit in the header and the wall; fewer points and a smoother outline allow a thinner one.");
    }

    /** Written are the name and the outline; what is measured on it is measured again. */
    private Object writeReplace() {
        return new Written(file, profile.pieces());
    }

    /** Serial form: reading makes the shape anew. */
    private record Written(String file, List<Profile2D.Piece> pieces) implements Serializable {
        private Object readResolve() {
            return of(file, Profile2D.of(pieces));
        }
    }

    /** Equal are bodies of the same outline under the same file name. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RevolvedShape that
                && file.equals(that.file)
                && profile.pieces().equals(that.profile.pieces());
    }

    @Override
    public int hashCode() {
        return Objects.hash(file, profile.pieces());
    }

    /** {@return the outline} */
    public Profile2D profile() {
        return profile;
    }

    @Override
    public String kind() {
        return "revolved";
    }

    @Override
    public String text() {
        return "revolved(file=\"" + file + "\")";
    }

    @Override
    public double volume() {
        return volume;
    }

    /** Exact for the outline, level faces and the inside of a hollow included. */
    @Override
    public double surface() {
        return profile.surface();
    }

    @Override
    public Vec3 centroid() {
        return profile.centroid();
    }

    /** Twice the largest radius across, and the height. */
    @Override
    public Extents extents() {
        return new Extents(2 * meridian.widest(), 2 * meridian.widest(), meridian.height());
    }

    /** The projection along the axis: a disc, or an annulus where there is a hole along it. */
    @Override
    public double planArea() {
        double inner = meridian.narrowest();
        return Math.PI * (meridian.widest() - inner) * (meridian.widest() + inner);
    }

    /** To 0.1 % of the volume over the first 90 % of it. OUTSIDE is without rim and hollow; ALL where it is no boat. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return switch (exposure) {
            case ALL -> all;
            case TRAY -> tray;
            case OUTSIDE -> outside;
        };
    }

    @Override
    public RestingAttitude restingAttitude() {
        return rest;
    }

    /** To 0.1 % of the volume over the first 90 % of it, its flat base or top shut. */
    @Override
    public Optional<DepthProfile> depthProfileAfloat(RestingAttitude lies) {
        return hollow.isPresent() ? Shape.super.depthProfileAfloat(lies) : afloat;
    }

    @Override
    public Optional<Hollow> hollow() {
        return hollow;
    }

    @Override
    public List<Notice> notices() {
        return notices;
    }

    /** Exact for the outline; made anew at each call. */
    @Override
    public Optional<Hull> hull() {
        return Optional.of(new RevolvedHull(profile));
    }
}
