// The same add-in as a unified manifest, derived to check it against the one published schema. It is not shipped.

export const schemaVersion = '1.30';

/** A unified manifest from the XML manifest's document and the functions' metadata. */
export function unifiedManifest(document, metadata) {
  const read = reader(document);
  const name = read.value('OfficeApp > DisplayName');
  const support = read.value('OfficeApp > SupportUrl');
  const capabilities = [...document.querySelectorAll('OfficeApp > Requirements Set')].map((set) => ({
    name: set.getAttribute('Name'),
    minVersion: set.getAttribute('MinVersion'),
  }));
  return {
    $schema: `https://developer.microsoft.com/json-schemas/teams/v${schemaVersion}/MicrosoftTeams.schema.json`,
    manifestVersion: schemaVersion,
    id: read.text('OfficeApp > Id'),
    version: read.text('OfficeApp > Version').split('.').slice(0, 3).join('.'),
    developer: {
      name: read.text('OfficeApp > ProviderName'),
      websiteUrl: support,
      privacyUrl: support,
      termsOfUseUrl: support,
    },
    name: { short: name, full: name },
    description: { short: name, full: read.value('OfficeApp > Description') },
    icons: { color: 'icons/icon-80.png', outline: 'icons/icon-32.png' },
    accentColor: '#2E7DB5',
    extensions: [
      {
        requirements: { scopes: ['workbook'], capabilities },
        runtimes: [runtime(read, metadata)],
        ribbons: [
          { contexts: ['default'], tabs: [...document.querySelectorAll('OfficeTab')].map(tab(read)) },
        ],
      },
    ],
  };
}

/** Reads by selector: text, the default value, or the value of the resource that is named. */
function reader(document) {
  const resource = (element) =>
    document.getElementById(element?.getAttribute('resid') ?? '')?.getAttribute('DefaultValue');
  return {
    text: (selector) => document.querySelector(selector)?.textContent?.trim() ?? '',
    value: (selector) => document.querySelector(selector)?.getAttribute('DefaultValue'),
    attribute: (selector, name) => document.querySelector(selector)?.getAttribute(name),
    resource: (selector, within = document) => resource(within.querySelector(selector)),
    icons: (element) =>
      [...element.querySelectorAll(':scope > Icon > Image')].map((image) => ({
        size: Number(image.getAttribute('size')),
        url: resource(image),
      })),
  };
}

function runtime(read, { functions, enums }) {
  const namespace = read.resource('Namespace');
  return {
    id: read.attribute('Runtimes > Runtime', 'resid'),
    type: 'general',
    lifetime: read.attribute('Runtimes > Runtime', 'lifetime'),
    code: {
      page: read.resource('Runtimes > Runtime'),
      script: read.resource('ExtensionPoint > Script > SourceLocation'),
    },
    actions: [{ id: read.text('TaskpaneId'), type: 'openPage' }],
    customFunctions: {
      namespace: { id: namespace, name: namespace },
      // The schema does not know of result types.
      functions: functions.map(({ result, ...rest }) => ({
        ...rest,
        result: { dimensionality: result?.dimensionality },
      })),
      enums,
    },
  };
}

const tab = (read) => (element) => ({
  builtInTabId: element.id,
  groups: [...element.querySelectorAll('Group')].map((group) => ({
    id: group.id,
    label: read.resource('Label', group),
    icons: read.icons(group),
    controls: [...group.querySelectorAll('Control')].map((control) => ({
      id: control.id,
      type: 'button',
      label: read.resource('Label', control),
      icons: read.icons(control),
      supertip: {
        title: read.resource('Supertip > Title', control),
        description: read.resource('Supertip > Description', control),
      },
      actionId: read.text('TaskpaneId'),
    })),
  })),
});
