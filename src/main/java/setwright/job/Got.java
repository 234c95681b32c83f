package setwright.job;

/** A feature with its size got another way. */
final class Got {
    private Got() {}

    static Feature by(Feature feature, GotBy way) {
        return switch (feature.kind()) {
            case FACE -> by((Face) feature, way);
            case STEP -> by((Step) feature, way);
            case SLOT -> by((Slot) feature, way);
            case ARC_SLOT -> by((ArcSlot) feature, way);
            case RADIUS_END -> by((RadiusEnd) feature, way);
            case POCKET -> by((Pocket) feature, way);
            case PROFILE -> by((ProfileCut) feature, way);
            case HOLE -> by((Hole) feature, way);
            case KEYSEAT -> by((Keyseat) feature, way);
            case WOODRUFF_SEAT -> by((WoodruffSeat) feature, way);
            case T_SLOT -> by((TSlot) feature, way);
            case DOVETAIL -> by((Dovetail) feature, way);
            case FLATS -> by((Flats) feature, way);
            case CHAMFER -> by((Chamfer) feature, way);
            case SLIT -> by((Slit) feature, way);
            case INCLINED_FACE -> by((InclinedFace) feature, way);
            case DIVIDED -> by((Divided) feature, way);
        };
    }

    private static Feature by(Face of, GotBy way) {
        return new Face(of.id(), of.note(), of.side(), of.across(), of.finish(), way);
    }

    private static Feature by(Step of, GotBy way) {
        return new Step(
                of.id(), of.note(), of.side(), of.edge(), of.width(), of.depth(), of.length(), of.finish(), way);
    }

    private static Feature by(Slot of, GotBy way) {
        return new Slot(
                of.id(), of.note(), of.side(), of.width(), of.depth(), of.length(), of.place(), of.finish(), way);
    }

    private static Feature by(ArcSlot of, GotBy way) {
        return new ArcSlot(
                of.id(),
                of.note(),
                of.side(),
                of.width(),
                of.depth(),
                of.radius(),
                of.centre(),
                of.from(),
                of.to(),
                of.finish(),
                way);
    }

    private static Feature by(RadiusEnd of, GotBy way) {
        return new RadiusEnd(of.id(), of.note(), of.side(), of.edge(), of.radius(), of.depth(), of.finish(), way);
    }

    private static Feature by(Pocket of, GotBy way) {
        return new Pocket(
                of.id(),
                of.note(),
                of.side(),
                of.length(),
                of.width(),
                of.depth(),
                of.corner(),
                of.place(),
                of.finish(),
                way);
    }

    private static Feature by(ProfileCut of, GotBy way) {
        return new ProfileCut(of.id(), of.note(), of.side(), of.inside(), of.corners(), of.depth(), of.finish(), way);
    }

    private static Feature by(Hole of, GotBy way) {
        return new Hole(
                of.id(),
                of.note(),
                of.side(),
                of.make(),
                of.size(),
                of.thread(),
                of.fit(),
                of.depth(),
                of.place(),
                of.position(),
                of.mouth(),
                way);
    }

    private static Feature by(Keyseat of, GotBy way) {
        return new Keyseat(
                of.id(),
                of.note(),
                of.side(),
                of.shaft(),
                of.width(),
                of.depth(),
                of.from(),
                of.length(),
                of.place(),
                of.finish(),
                way);
    }

    private static Feature by(WoodruffSeat of, GotBy way) {
        return new WoodruffSeat(
                of.id(),
                of.note(),
                of.side(),
                of.shaft(),
                of.key(),
                of.width(),
                of.cutter(),
                of.depth(),
                of.place(),
                of.finish(),
                way);
    }

    private static Feature by(TSlot of, GotBy way) {
        return new TSlot(
                of.id(),
                of.note(),
                of.side(),
                of.neck(),
                of.depth(),
                of.headWidth(),
                of.headHeight(),
                of.length(),
                of.place(),
                of.finish(),
                way);
    }

    private static Feature by(Dovetail of, GotBy way) {
        return new Dovetail(
                of.id(),
                of.note(),
                of.side(),
                of.male(),
                of.width(),
                of.depth(),
                of.angle(),
                of.place(),
                of.finish(),
                way);
    }

    private static Feature by(Flats of, GotBy way) {
        return new Flats(of.id(), of.note(), of.side(), of.count(), of.across(), of.length(), of.finish(), way);
    }

    private static Feature by(Chamfer of, GotBy way) {
        return new Chamfer(of.id(), of.note(), of.side(), of.of(), of.width(), of.angle(), of.finish(), way);
    }

    private static Feature by(Slit of, GotBy way) {
        return new Slit(
                of.id(), of.note(), of.side(), of.width(), of.depth(), of.length(), of.place(), of.finish(), way);
    }

    private static Feature by(InclinedFace of, GotBy way) {
        return new InclinedFace(of.id(), of.note(), of.side(), of.falls(), of.angle(), of.depth(), of.finish(), way);
    }

    private static Feature by(Divided of, GotBy way) {
        return new Divided(
                of.id(),
                of.note(),
                of.side(),
                of.what(),
                of.count(),
                of.diameter(),
                of.width(),
                of.depth(),
                of.length(),
                of.axis(),
                of.marks(),
                of.tooth(),
                of.finish(),
                way);
    }
}
