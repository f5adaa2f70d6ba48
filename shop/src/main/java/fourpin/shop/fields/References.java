package fourpin.shop.fields;

import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.file.Form;
import fourpin.shop.file.Key;
import fourpin.shop.file.Kind;
import fourpin.shop.file.ListOf;
import fourpin.shop.file.Named;
import fourpin.shop.file.OneOf;
import fourpin.shop.file.Short;
import fourpin.shop.file.Word;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where a file calls something by its name.
 *
 * @param what is called so: "a material"
 */
record References(JobText text, String what, String name) {

  /** All of them. @param file the form of the whole file */
  List<Route> in(Form<?> file) {
    return under(file, Route.TOP).toList();
  }

  private Stream<Route> under(Kind<?> kind, Route at) {
    return switch (kind) {
      case Word<?> word -> word(word, at);
      case Form<?> form -> form.keys().stream().flatMap(key -> under(key, at));
      case Short<?, ?> both -> under(text.word(at).isPresent() ? both.word() : both.full(), at);
      case ListOf<?>(Kind<?> item, _) -> items(at).flatMap(each -> under(item, each));
      case Named<?> named -> names(at).flatMap(each -> under(named.thing(), each));
      case OneOf<?> one ->
          text.value(at).flatMap(thing -> FileFields.form(one, thing)).stream()
              .flatMap(form -> under(form, at));
    };
  }

  private Stream<Route> under(Key<?> key, Route group) {
    Route at = group.to(key.name());
    return text.value(at).isPresent() ? under(key.kind(), at) : Stream.empty();
  }

  private Stream<Route> word(Word<?> word, Route at) {
    boolean meant = word.shape().calls().equals(what) && text.word(at).equals(Optional.of(name));
    return meant ? Stream.of(at) : Stream.empty();
  }

  /** One thing may stand without the list. */
  private Stream<Route> items(Route at) {
    return text.value(at).orElseThrow() instanceof Value.Items(var items)
        ? IntStream.rangeClosed(1, items.size()).mapToObj(n -> at.item(n, items.size()))
        : Stream.of(at);
  }

  private Stream<Route> names(Route at) {
    return text.value(at).orElseThrow() instanceof Value.Group(var things)
        ? things.keySet().stream().map(at::to)
        : Stream.empty();
  }
}
