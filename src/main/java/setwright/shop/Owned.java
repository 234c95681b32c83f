package setwright.shop;

/** A thing (or a set counted as one) that the shop owns, with the place where it is kept. */
public sealed interface Owned extends ShopRow
        permits Machine,
                Holder,
                Cutter,
                Vise,
                Parallels,
                TableClamp,
                Nut,
                Washer,
                Stud,
                StepBlocks,
                TNut,
                Stop,
                AnglePlate,
                SetUpBlocks,
                VBlocks,
                AngleBlocks,
                RotaryTable,
                DividingHead,
                ColletBlock,
                MagneticChuck,
                FixturePlate,
                OtherJaws,
                Adhesive,
                WorkChuck,
                Tailstock,
                Mandrel,
                Jack {
    Kept kept();
}
