package setwright.file;

import setwright.file.json.Problems;
import setwright.file.shape.Checking;
import setwright.file.shape.HalfRead;
import setwright.shop.Shop;

/** The rules that hold between the values of a file, beyond what the records themselves say. */
final class DomainRules implements Checking.Watch {
    private final NumberRules numbers;
    private final FormRules forms;
    private final References references;

    /** @param shop where ids that the file itself does not define may be found */
    DomainRules(Shop shop, Problems problems) {
        this.numbers = new NumberRules(problems);
        this.forms = new FormRules(problems);
        this.references = new References(shop, problems);
    }

    @Override
    public void pass(HalfRead record) {
        numbers.check(record);
        forms.check(record);
        references.pass(record);
    }

    /** To be called once, when every record has passed. */
    void finish() {
        references.finish();
    }
}
