/** A filter that reads as a word in a sentence — "standing any" — and opens as a list. */
import { Combobox, useCombobox } from '@mantine/core';

export type Choice = { value: string; words: string };

export function WordChoice(props: {
  name: string;
  any: string;
  value: string | undefined;
  choices: readonly Choice[];
  onChoose: (value: string | undefined) => void;
}) {
  const store = useCombobox({
    onDropdownClose: () => store.resetSelectedOption(),
    onDropdownOpen: () => store.selectActiveOption(),
  });
  const choose = (value: string) => {
    props.onChoose(value === '' ? undefined : value);
    store.closeDropdown();
  };
  const chosen = props.choices.find((choice) => choice.value === props.value)?.words ?? props.value ?? props.any;
  const options = [{ value: '', words: props.any }, ...props.choices];
  return (
    <span className="word-choice">
      <Combobox store={store} onOptionSubmit={choose} position="bottom-start" width="max-content">
        <Combobox.Target targetType="button" withExpandedAttribute>
          <button type="button" aria-label={`${props.name}: ${chosen}`} onClick={() => store.toggleDropdown()}>
            <span className="quiet">{props.name}</span> <strong>{chosen}</strong>
          </button>
        </Combobox.Target>
        <Combobox.Dropdown className="floating">
          <Combobox.Options className="choices" aria-label={props.name}>
            {options.map((choice) => (
              <Combobox.Option
                key={choice.value}
                value={choice.value}
                className="choice"
                active={choice.value === (props.value ?? '')}
                aria-selected={choice.value === (props.value ?? '')}
              >
                {choice.words}
              </Combobox.Option>
            ))}
          </Combobox.Options>
        </Combobox.Dropdown>
      </Combobox>
    </span>
  );
}
