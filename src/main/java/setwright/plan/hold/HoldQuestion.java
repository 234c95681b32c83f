package setwright.plan.hold;

import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Stock;
import setwright.holding.balance.Load;
import setwright.job.DrawnHolding;
import setwright.plan.part.Heights;

/** All that the balances of one operation are made of, besides the rows of the shop. */
public record HoldQuestion(
        String operation,
        String setUp,
        DrawnHolding holding,
        Heights heights,
        List<Body> fixtures,
        Stock start,
        List<Load> loads) {
    public HoldQuestion {
        fixtures = List.copyOf(fixtures);
        loads = List.copyOf(loads);
    }
}
