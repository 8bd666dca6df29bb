package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;

/** A kind with level flats, sharp edges and upright sides over an {@link Outline}. */
interface UprightPrism extends ClosedForm {
    /** {@return the outline of its flats} */
    Outline outline();

    /** {@return the height along z, m} */
    double height();

    @Override
    default Erosion erosion() {
        return new PrismErosion(outline(), height(), 2);
    }

    @Override
    default double planArea() {
        return outline().area(0);
    }

    /** Exact up to the first break of the outline, then to 1e-6 between nodes. On a tray the lower flat is shut. */
    @Override
    default DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return PrismErosion.profile(outline(), height(), exposure);
    }

    @Override
    default double depthError() {
        return ProfileTable.BETWEEN_NODES;
    }

    /**
     * On its flat where that is nearer to the centroid than any plane that touches the sides; else by the search over
     * the hull.
     */
    @Override
    default RestingAttitude restingAttitude() {
        return height() <= 2 * outline().reach()
                ? RestingAttitude.prism(Vec3.UP, height(), planArea())
                : ClosedForm.super.restingAttitude();
    }
}
