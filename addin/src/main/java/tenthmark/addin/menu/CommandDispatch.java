package tenthmark.addin.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.FeatureStateEvent;
import com.sun.star.frame.XDispatchResultListener;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XNotifyingDispatch;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import tenthmark.addin.OfficeLocale;

/**
 * One command in one window. A user is spoken to in message boxes. A program that asks for the
 * result gets what was said as the result instead.
 */
final class CommandDispatch extends WeakBase implements XNotifyingDispatch {

  private final Command command;
  private final XComponentContext office;
  private final XFrame frame;

  CommandDispatch(Command command, XComponentContext office, XFrame frame) {
    this.command = command;
    this.office = office;
    this.frame = frame;
  }

  @Override
  public void dispatch(URL url, PropertyValue[] arguments) {
    perform();
  }

  /** Does it for a user. */
  void perform() {
    perform(new MessageBoxes(frame));
  }

  @Override
  public void dispatchWithNotification(
      URL url, PropertyValue[] arguments, XDispatchResultListener listener) {
    Unattended conversation = new Unattended();
    boolean done = perform(conversation);
    short state = done ? DispatchResultState.SUCCESS : DispatchResultState.FAILURE;
    listener.dispatchFinished(new DispatchResultEvent(this, state, conversation.said()));
  }

  /** Whether it was done; what hindered it is said. */
  private boolean perform(Conversation conversation) {
    Workplace workplace =
        new Workplace(office, frame, OfficeLocale.of(office), conversation, command.name());
    return workplace.attempt(
        () -> {
          if (!Workplace.isIn(frame)) {
            throw new RefusalException("spreadsheet.none");
          }
          command.run(workplace);
        });
  }

  @Override
  public void addStatusListener(XStatusListener listener, URL url) {
    FeatureStateEvent state = new FeatureStateEvent();
    state.Source = this;
    state.FeatureURL = url;
    state.IsEnabled = Workplace.isIn(frame);
    listener.statusChanged(state);
  }

  /** Nothing to forget: the state of a window's commands does not change while it is shown. */
  @Override
  public void removeStatusListener(XStatusListener listener, URL url) {}
}
