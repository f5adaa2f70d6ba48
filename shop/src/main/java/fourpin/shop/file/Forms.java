package fourpin.shop.file;

import fourpin.job.CaseOrder;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import java.util.Map;

/**
 * What files can state. The readers, the schemas, the documents and the fields of the pages all
 * follow these forms, so that a key is described once.
 */
public final class Forms {

  public static final Form<?> JOB = JobForm.FORM;

  public static final Form<CaseOrder> CASE = CaseForm.FORM;

  public static final Form<?> BAY = BayForm.FORM;

  public static final Form<?> SHOP = ShopForm.FORM;

  /** The keys are those of {@link Setting}. */
  public static final Form<Map<Setting, SettingValue>> SETTINGS = SettingsForm.FORM;

  private Forms() {}
}
