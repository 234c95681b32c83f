package setwright.plan.hold;

/** What a joint between the device and the table bears, made once for a set-up. */
sealed interface JointBalance permits DeviceBalance, LockBalance {
    OperationHold hold(HoldQuestion asked);
}
