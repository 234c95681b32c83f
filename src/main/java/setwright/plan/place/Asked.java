package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.Hole;
import setwright.job.InclinedFace;
import setwright.job.Keyseat;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.job.WoodruffSeat;

/** A size that the drawing gives limits for; general tolerances are not asked. */
record Asked(Feature feature, Aspect aspect, Size size) {
    double half() {
        return (size.greatestMm() - size.leastMm()) / 2;
    }

    double nominal() {
        return size.nominal().inside();
    }

    /** The middle of the limits over the nominal size. */
    double middle() {
        return (size.greatestMm() + size.leastMm()) / 2 - nominal();
    }

    /** Every size of a feature that has limits of its own. */
    static List<Asked> of(Feature feature) {
        List<Asked> asked = new ArrayList<>();
        switch (feature.kind()) {
            case FACE -> add(asked, feature, Aspect.ACROSS, ((Face) feature).across());
            case STEP -> {
                add(asked, feature, Aspect.WIDTH, ((Step) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Step) feature).depth());
            }
            case SLOT -> {
                add(asked, feature, Aspect.WIDTH, ((Slot) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Slot) feature).depth());
                add(asked, feature, Aspect.LENGTH, ((Slot) feature).length());
            }
            case ARC_SLOT -> {
                add(asked, feature, Aspect.WIDTH, ((ArcSlot) feature).width());
                add(asked, feature, Aspect.DEPTH, ((ArcSlot) feature).depth());
            }
            case RADIUS_END -> {
                add(asked, feature, Aspect.RADIUS, ((RadiusEnd) feature).radius());
                add(asked, feature, Aspect.DEPTH, ((RadiusEnd) feature).depth());
            }
            case POCKET -> {
                add(asked, feature, Aspect.LENGTH, ((Pocket) feature).length());
                add(asked, feature, Aspect.WIDTH, ((Pocket) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Pocket) feature).depth());
            }
            case PROFILE -> add(asked, feature, Aspect.DEPTH, ((ProfileCut) feature).depth());
            case HOLE -> {
                Hole hole = (Hole) feature;
                add(asked, feature, Aspect.DIAMETER, hole.make() == Hole.Make.TAPPED ? null : hole.size());
                add(asked, feature, Aspect.DEPTH, hole.depth());
            }
            case KEYSEAT -> {
                add(asked, feature, Aspect.WIDTH, ((Keyseat) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Keyseat) feature).depth());
                add(asked, feature, Aspect.LENGTH, ((Keyseat) feature).length());
            }
            case WOODRUFF_SEAT -> {
                add(asked, feature, Aspect.WIDTH, ((WoodruffSeat) feature).width());
                add(asked, feature, Aspect.DEPTH, ((WoodruffSeat) feature).depth());
            }
            case T_SLOT -> {
                add(asked, feature, Aspect.WIDTH, ((TSlot) feature).neck());
                add(asked, feature, Aspect.DEPTH, ((TSlot) feature).depth());
            }
            case DOVETAIL -> {
                add(asked, feature, Aspect.WIDTH, ((Dovetail) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Dovetail) feature).depth());
            }
            case FLATS -> {
                add(asked, feature, Aspect.ACROSS, ((Flats) feature).across());
                add(asked, feature, Aspect.DEPTH, ((Flats) feature).length());
            }
            case CHAMFER -> add(asked, feature, Aspect.WIDTH, ((Chamfer) feature).width());
            case SLIT -> {
                add(asked, feature, Aspect.WIDTH, ((Slit) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Slit) feature).depth());
            }
            case INCLINED_FACE -> add(asked, feature, Aspect.DEPTH, ((InclinedFace) feature).depth());
            case DIVIDED -> {
                add(asked, feature, Aspect.DIAMETER, ((Divided) feature).diameter());
                add(asked, feature, Aspect.WIDTH, ((Divided) feature).width());
                add(asked, feature, Aspect.DEPTH, ((Divided) feature).depth());
            }
        }
        return List.copyOf(asked);
    }

    private static void add(List<Asked> asked, Feature feature, Aspect aspect, @Nullable Size size) {
        if (size != null && size.toleranced() && size.greatestMm() > size.leastMm()) {
            asked.add(new Asked(feature, aspect, size));
        }
    }
}
